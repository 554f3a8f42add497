/**
 * Words to clips that know their perceptual centre: {@link cuelead.voice.Voice}, {@link cuelead.voice.Clip}. Two voices:
 * {@link cuelead.voice.SynthVoice}, whose centres come from the synthesizer's own phones, kept by
 * {@link cuelead.voice.VoiceCache}; and {@link cuelead.voice.RecordedWords}, the user's own recordings, whose centres
 * are heard. {@link cuelead.voice.Voices} asks one after the other. May import {@code report}, {@code sound},
 * {@code dsp}, {@code time}.
 */
package cuelead.voice;
