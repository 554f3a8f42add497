package cuelead.lesson;

/** What of a dance a pass goes through. Sections are numbered from 1 through all parts of the sheet. */
public sealed interface Piece {
    /** One section alone. */
    record OneSection(int section) implements Piece {}

    /**
     * Sections that follow each other in one part, joined.
     *
     * @param first before {@code last}
     */
    record Joined(int first, int last) implements Piece {
        public Joined {
            if (first < 1 || last <= first) {
                throw new IllegalArgumentException("sections " + first + " to " + last);
            }
        }
    }

    /** One wall, from 1; of a phrased dance one part of its sequence. */
    record Wall(int wall) implements Piece {}

    /** The tag of a wall alone: entered eight counts before, and left eight counts after. */
    record TagOf(int wall) implements Piece {}

    /** The restart of a wall alone, likewise. */
    record RestartOf(int wall) implements Piece {}

    /** Where one part of a phrased dance follows another, likewise: the parts' names. */
    record PartChange(String from, String to) implements Piece {}

    /** Whether it is about a tag, a restart or a change of parts, and so told by its name. */
    default boolean isChange() {
        return this instanceof TagOf || this instanceof RestartOf || this instanceof PartChange;
    }

    /** All of it, as long as the music lasts. */
    record WholeDance() implements Piece {}
}
