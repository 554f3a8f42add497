/**
 * Plays a song slower or faster at its own pitch. {@link cuelead.dsp.stretch.OnsetFinder} hears beforehand where
 * something is struck; {@link cuelead.dsp.stretch.Stretcher} copies those attacks as they are to their place and turns
 * what is left in a phase vocoder, along a way through the song that is exact where something is struck. May import
 * {@code time}.
 */
package cuelead.dsp.stretch;
