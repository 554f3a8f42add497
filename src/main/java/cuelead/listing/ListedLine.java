package cuelead.listing;

import cuelead.sheet.StepPlace;
import java.util.Optional;

/** A line of a dance that is listed count by count. */
public sealed interface ListedLine {
    /** The 1-based line of the sheet where it is written; 0 when not known. */
    int line();

    /** The head of a section, or a sentence of what becomes of a wall. */
    record Head(String words, int line) implements ListedLine {}

    /**
     * A count.
     *
     * @param place  whose call can be written into the sheet; empty for steps that only end a wall
     * @param count  as written: {@code 3&}
     * @param foot   may be empty
     * @param turn   may be empty
     * @param facing as a clock, may be empty
     * @param weight on which foot afterwards
     * @param call   what is said; empty for silence
     * @param isOwn  whether the sheet says the call itself
     * @param figure that begins here, may be empty
     */
    record Counted(
            Optional<StepPlace> place,
            String count,
            String what,
            String foot,
            String weight,
            String turn,
            String facing,
            String call,
            boolean isOwn,
            String figure,
            int line)
            implements ListedLine {}
}
