package cuelead.dance;

/**
 * The sheet's own call for a count, written in double quotes at the end of its line.
 *
 * @param count the count that it is for, within its section
 * @param words what to say; empty for silence
 */
public record OwnCall(Count count, String words) {
    public boolean isSilence() {
        return words.isEmpty();
    }
}
