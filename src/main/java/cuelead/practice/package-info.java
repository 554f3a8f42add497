/**
 * Wires the stages together: a sheet and a song in, a mix and its plan out. May import everything but
 * {@code dsp}, {@code output} and the command line.
 */
package cuelead.practice;
