/**
 * Music files to samples and beats: {@link cuelead.song.Song}, decoders, beat files, and what was measured about
 * songs. May import {@code report}, {@code sound}, {@code dsp}, {@code time}.
 */
package cuelead.song;
