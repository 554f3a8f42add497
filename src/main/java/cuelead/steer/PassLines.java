package cuelead.steer;

/**
 * Where a lesson is, to be read.
 *
 * @param pass  its number, from 1; 0 where no lesson is given
 * @param count {@code Pass 5 of 18}
 * @param what  is gone through: {@code sections 1 to 2, walk (68 beats a minute)}
 * @param time  {@code , time 2 of 3}; empty where it is danced once
 * @param next  what comes after it; empty where the dance says that itself
 * @param left  how long the lesson still goes
 */
public record PassLines(int pass, String count, String what, String time, String next, String left) {
    /** No lesson is given. */
    public static final PassLines NONE = new PassLines(0, "", "", "", "", "");

    /** The pass that is gone through; empty where no lesson is given. */
    public String now() {
        return pass == 0 ? "" : count + ": " + what + time;
    }
}
