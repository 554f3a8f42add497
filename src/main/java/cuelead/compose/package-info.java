/**
 * Makes the demo songs. A score in plain text goes through five stages, each a value that can be printed and
 * tested without sound: {@link cuelead.compose.ScoreReader} reads a {@link cuelead.compose.Score};
 * {@link cuelead.compose.Arranger} turns it into an {@link cuelead.compose.Arrangement} (notes in beats);
 * {@link cuelead.compose.Performer} into a {@link cuelead.compose.Performance} (notes and beats in seconds);
 * {@link cuelead.compose.MidiSong} into MIDI; {@link cuelead.compose.Renderer} into sound, which
 * {@link cuelead.compose.Mastering} levels and {@link cuelead.compose.Mp3Encoder} writes. May import
 * {@code report}, {@code dsp}, {@code time}; imported by nothing.
 */
package cuelead.compose;
