/**
 * What is danced: {@link cuelead.dance.Dance} with its parts, sections, steps, tags and restarts; counts, feet,
 * weight, turns and facings; the figures of the trade; what a checker must find. Lengths here are
 * {@link cuelead.dance.Counts}, never beats. May import {@code time} and {@code report}.
 */
package cuelead.dance;
