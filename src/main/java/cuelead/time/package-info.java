/**
 * Musical and sample time, and the only conversions between them: {@link cuelead.time.Beats} (a length),
 * {@link cuelead.time.BeatPosition} (a point on a grid), {@link cuelead.time.BeatGrid} (beats of a song in
 * seconds), {@link cuelead.time.Tempo}, {@link cuelead.time.SampleRate}. Imports nothing of Cuelead.
 */
package cuelead.time;
