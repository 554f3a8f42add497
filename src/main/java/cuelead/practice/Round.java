package cuelead.practice;

import cuelead.lesson.Pass;

/**
 * A pass of a lesson danced once, with its run-up.
 *
 * @param pass      which pass of the lesson, from 1
 * @param repeat    which time of that pass, from 1
 * @param wanted    the pass
 * @param manner    how it is played
 * @param take      what is heard; its frames are those of its own beats
 * @param beatSeconds the first beat of its run-up, seconds of the take
 * @param fromFrame the frame of the take that is heard first, just before that beat
 * @param toFrame   the frame at which the next round may begin
 */
record Round(
        int pass, int repeat, Pass wanted, Manner manner, Take take, double beatSeconds, long fromFrame, long toFrame) {
    /** Whether the next round is one of the next pass. */
    boolean isLastOfPass() {
        return repeat == wanted.times();
    }

    long frames() {
        return toFrame - fromFrame;
    }
}
