/**
 * The pull interface {@link cuelead.sound.Sound} and what can be pulled: a song's samples, clips at their
 * places, a click, gains, the mix. The inner format is stereo float at the song's rate, full scale = 1. May
 * import {@code time} and {@code dsp}.
 */
package cuelead.sound;
