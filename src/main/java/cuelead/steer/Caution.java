package cuelead.steer;

import java.util.List;

/** The usual cautions, shown where they matter. */
public final class Caution {
    /** Of a class, in lines. */
    public static final List<String> OF_A_CLASS = List.of(
            "Begin softly: long loud sound harms hearing. Keep the floor clear, and",
            "take turns only as fast as is safe for you.");

    /** Of a file with music in it. */
    public static final String OF_LICENCES = "Take the song's licence into account before you hand such a file on.";

    private Caution() {}
}
