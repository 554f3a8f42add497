/**
 * Words to clips that know their perceptual centre, synthesized or recorded: {@link cuelead.voice.Voice},
 * {@link cuelead.voice.Clip}. May import {@code report}, {@code sound}, {@code dsp}, {@code time}.
 */
package cuelead.voice;
