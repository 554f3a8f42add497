package cuelead.steer;

import cuelead.time.Tempo;

/** What a user asks of what plays: an order that has a key, or something that a hand points at. */
public sealed interface Ask permits Order, Ask.AtTempo, Ask.ToSection, Ask.ToPass {
    /** The song, or the pass of a lesson, at so many beats a minute; held within what can be played. */
    record AtTempo(Tempo tempo) implements Ask {}

    /**
     * Another section.
     *
     * @param sections how many on from the one that is danced; below 0 = back
     */
    record ToSection(int sections) implements Ask {}

    /**
     * Another pass of a lesson.
     *
     * @param passes how many on; below 0 = back
     */
    record ToPass(int passes) implements Ask {}
}
