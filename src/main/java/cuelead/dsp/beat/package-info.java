/**
 * Hearing beats, bars and phrases in sound: published algorithms on arrays, from a song's spectrum to the times of its
 * beats. {@link cuelead.dsp.beat.BandSpectrum} is what all of them look at, {@link cuelead.dsp.beat.BeatNetwork} says
 * where a beat may lie, {@link cuelead.dsp.beat.BarPointer} finds the row of beats through the whole song. May import
 * {@code time} and {@code dsp}.
 */
package cuelead.dsp.beat;
