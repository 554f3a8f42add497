package cuelead.dance;

/**
 * A clock time that the sheet claims: after that many counts of the part, on the first wall, the dancer faces so.
 *
 * @param part        name of the part or tag
 * @param afterCounts from the part's first count up to and with the count that the mark stands behind, such that
 *                    every step that begins before it has been danced
 * @param stated      the facing as written
 * @param line        1-based line of the sheet
 * @param column      1-based column of the mark
 */
public record ClockMark(String part, Counts afterCounts, Facing stated, int line, int column) {}
