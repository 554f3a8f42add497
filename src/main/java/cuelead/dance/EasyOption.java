package cuelead.dance;

import java.util.List;

/**
 * An easier way to dance some counts, as the sheet offers it.
 *
 * @param section name of the section
 * @param first   the first whole count that it is for
 * @param last    the last one
 * @param words   what the sheet says of it
 * @param steps   what is danced instead; empty where the words tell no steps for these counts
 */
public record EasyOption(String section, int first, int last, String words, List<Step> steps) {
    public EasyOption {
        steps = List.copyOf(steps);
    }

    /** {@code 5-8}, or {@code 5}. */
    public String counts() {
        return first == last ? String.valueOf(first) : first + "-" + last;
    }

    /** Whether a step is danced on these counts; an "and" belongs to the count before it. */
    boolean covers(Step step) {
        return step.count().number() >= first && step.count().number() <= last;
    }
}
