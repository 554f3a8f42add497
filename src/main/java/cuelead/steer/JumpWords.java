package cuelead.steer;

import cuelead.practice.Jump;
import cuelead.practice.LivePractice.TakenBack;

/** What is said of jumps, and of realignments that are taken back. */
public final class JumpWords {
    private JumpWords() {}

    static String nextSection(Jump jump) {
        return next(jump, "section", section(jump));
    }

    static String nextWall(Jump jump) {
        return next(jump, "wall", wall(jump));
    }

    /** A run-up may begin before what is heard: then the jump leads back, and that is said. */
    private static String next(Jump jump, String what, String name) {
        return switch (jump.way()) {
            case ON -> "Next " + what + ".";
            case BACK -> name + ", from its run-up.";
            case SONG_BEGINNING -> "From the beginning of the song.";
            case NO_FURTHER -> "This is the last " + what + ".";
        };
    }

    static String back(Jump jump, String done) {
        return jump.way() == Jump.Way.SONG_BEGINNING ? "From the beginning of the song." : done;
    }

    static String takenBack(TakenBack which) {
        return switch (which) {
            case THE_FIRST -> "The dance lies as the sheet says.";
            case A_LATER_ONE -> "The dance lies as before.";
            case NOTHING -> "The dance lies as the sheet says already.";
        };
    }

    private static String section(Jump jump) {
        return jump.aim().section().name();
    }

    private static String wall(Jump jump) {
        return "Wall " + jump.aim().run().wall();
    }
}
