package cuelead.dance;

/**
 * A line that could not be read whole: nothing is known of the feet that it leaves free, or of what it turns where it
 * speaks of turning, so nothing that follows from it is held against the sheet.
 *
 * @param part name of the part or tag
 * @param from counts of the part that are danced before the line
 * @param about what is not known
 * @param line 1-based line of the sheet
 */
public record Doubt(String part, Counts from, About about, int line) {
    /** What a line in doubt leaves open. */
    public enum About {
        /** Which foot is free: no word of the line turns anyone. */
        WEIGHT,
        WEIGHT_AND_TURNS
    }
}
