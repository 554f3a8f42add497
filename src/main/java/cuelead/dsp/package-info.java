/**
 * Published algorithms on arrays: loudness, true peak, resampling; one class an algorithm, each with its source.
 * Works on primitive arrays, so every name says its unit. May import {@code time}.
 */
package cuelead.dsp;
