package cuelead.cli;

import cuelead.practice.Heard;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;

/** What is heard from speakers that sound later than they say, as wireless ones do. Used on one thread. */
final class HeardLater {
    /** Between two looks the song goes on as time does, but for jumps. */
    private static final double MOST_SONG_A_SECOND = 2;

    private final double delaySeconds;
    private final Deque<Look> looks = new ArrayDeque<>();

    private record Look(double atSeconds, Heard heard) {}

    HeardLater(double delaySeconds) {
        this.delaySeconds = delaySeconds;
    }

    /**
     * What leaves the speakers now.
     *
     * @param nowSeconds of any clock that never goes back
     * @param heard      what leaves the computer now
     */
    Heard at(double nowSeconds, Heard heard) {
        if (delaySeconds == 0) {
            return heard;
        }
        looks.addLast(new Look(nowSeconds, heard));
        double wanted = nowSeconds - delaySeconds;
        while (looks.size() > 1 && second().atSeconds <= wanted) {
            looks.removeFirst();
        }
        Look first = looks.getFirst();
        if (first.atSeconds > wanted) {
            return moved(first.heard, first.heard.songSeconds() - (first.atSeconds - wanted));
        }
        return looks.size() > 1 ? between(first, second(), wanted) : first.heard;
    }

    private Look second() {
        Iterator<Look> all = looks.iterator();
        all.next();
        return all.next();
    }

    private static Heard between(Look before, Look after, double wanted) {
        double span = after.atSeconds - before.atSeconds;
        double song = after.heard.songSeconds() - before.heard.songSeconds();
        boolean goesOn =
                after.heard.version() == before.heard.version() && song >= 0 && song <= MOST_SONG_A_SECOND * span;
        return goesOn && span > 0
                ? moved(before.heard, before.heard.songSeconds() + song * (wanted - before.atSeconds) / span)
                : before.heard;
    }

    private static Heard moved(Heard heard, double songSeconds) {
        return new Heard(
                heard.version(),
                songSeconds,
                heard.timeline(),
                heard.calls(),
                heard.settings(),
                heard.repeating(),
                heard.aim());
    }
}
