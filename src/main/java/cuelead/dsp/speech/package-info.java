/**
 * Hears sounds of speech: {@link cuelead.dsp.speech.MelBands} of a sound go through a small
 * {@link cuelead.dsp.speech.SpeechNetwork}, which gives {@link cuelead.dsp.speech.PhoneOdds}. May import {@code dsp},
 * {@code dsp.beat} (its layers) and {@code time}.
 */
package cuelead.dsp.speech;
