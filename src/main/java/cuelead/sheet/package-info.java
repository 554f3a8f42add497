/**
 * Step-sheet text to a {@link cuelead.dance.Dance}, or problems with line and column. May import {@code dance},
 * {@code document}, {@code report}, {@code time}.
 */
package cuelead.sheet;
