package cuelead.window.song;

import cuelead.song.Tapped.Carried;

/** What became of taps. */
final class TapWords {
    private TapWords() {}

    static String of(Carried carried) {
        return switch (carried) {
            case BY_HEARD_BEATS -> "Your beat was found everywhere in the song.";
            case BY_LISTENING_AGAIN -> "The song was heard again, at the tempo of your taps.";
            case EVENLY -> "Nothing in the song fits your taps, so their tempo goes on evenly; \"Undo\" undoes it.";
        };
    }
}
