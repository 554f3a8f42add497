package cuelead.dance;

/**
 * A line that could not be read whole: nothing is known of what it turns or of the feet that it leaves free, so nothing
 * that follows from it is held against the sheet.
 *
 * @param part name of the part or tag
 * @param from counts of the part that are danced before the line
 * @param line 1-based line of the sheet
 */
public record Doubt(String part, Counts from, int line) {}
