package cuelead.steer;

/**
 * Where a lesson is, to be read.
 *
 * @param pass its number, from 1; 0 where no lesson is given
 * @param now  the pass that is gone through; empty where no lesson is given
 * @param next what comes after it; empty where the dance says that itself
 * @param left how long the lesson still goes
 */
public record PassLines(int pass, String now, String next, String left) {
    /** No lesson is given. */
    public static final PassLines NONE = new PassLines(0, "", "", "");
}
