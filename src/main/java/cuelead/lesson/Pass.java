package cuelead.lesson;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;

/**
 * One step of a lesson.
 *
 * @param piece  what is danced
 * @param pace   how fast
 * @param times  how often, each time after its run-up; 1 to {@value #MOST_TIMES}
 * @param over   what is danced to
 * @param level  how much is called
 * @param fading whether calls grow fewer from wall to wall
 */
public record Pass(Piece piece, Pace pace, int times, Over over, CallLevel level, CallSettings.Fading fading) {
    public static final int MOST_TIMES = 20;

    /** What is danced to. */
    public enum Over {
        CLICKS,
        MUSIC
    }

    public Pass {
        if (times < 1 || times > MOST_TIMES) {
            throw new IllegalArgumentException("a pass of " + times + " times");
        }
    }

    /** With every word called. */
    public Pass(Piece piece, Pace pace, int times, Over over) {
        this(piece, pace, times, over, CallLevel.WORDS, CallSettings.Fading.STEADY);
    }

    /** The same with calls that fade. */
    Pass withFading() {
        return new Pass(piece, pace, times, over, level, CallSettings.Fading.WALL_BY_WALL);
    }

    /** The same at another pace. */
    public Pass at(Pace other) {
        return new Pass(piece, other, times, over, level, fading);
    }
}
