/**
 * Music files to samples and beats: {@link cuelead.song.Song}, decoders, {@link cuelead.song.Ear}, beat files
 * and their correction, and what was measured about songs. May import {@code report}, {@code sound}, {@code dsp}, {@code time}.
 */
package cuelead.song;
