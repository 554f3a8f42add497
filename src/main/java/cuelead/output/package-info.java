/**
 * Where sound goes: speakers (OpenAL) and audio files. {@link cuelead.output.OpenAlOutput} runs one audio thread a
 * device, which feeds 120 ms ahead, in six buffers of 20 ms; with the device's own 60 ms a change in what is played is
 * heard at most 190 ms later. What a lost, stopped or changed device did not play is played again. May import
 * {@code report}, {@code sound}, {@code time}.
 */
package cuelead.output;
