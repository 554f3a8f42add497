package cuelead.plan;

import cuelead.time.BeatPosition;
import java.util.Optional;

/**
 * The piece of a timeline that is called for. It opens like a dance: its section is named, then it is counted in.
 *
 * @param from            its first count
 * @param to              the count at which nothing is called any more; empty = to the end
 * @param earliestSeconds nothing is said before this time of the song
 * @param title           how it is announced first, in place of its wall; empty = as a dance is
 */
public record Extent(BeatPosition from, Optional<BeatPosition> to, double earliestSeconds, Optional<Title> title) {
    /** Nothing is said in the first moments of the music: a clip begins a little before it is heard. */
    public static final double EARLIEST_SECONDS = 0.05;

    /** A piece that is announced like a dance. */
    public Extent(BeatPosition from, Optional<BeatPosition> to, double earliestSeconds) {
        this(from, to, earliestSeconds, Optional.empty());
    }

    /** The whole dance. */
    public static Extent whole(Timeline timeline) {
        return new Extent(timeline.countOne(), Optional.empty(), EARLIEST_SECONDS);
    }

    boolean contains(DancedCount count) {
        return count.at().compareTo(from) >= 0 && (to.isEmpty() || count.at().compareTo(to.get()) < 0);
    }

    /** The first count that is called for; empty when none is danced. */
    public Optional<DancedCount> first(Timeline timeline) {
        return timeline.counts().stream().filter(this::contains).findFirst();
    }

    /** Whether its title has told what else would be told before it: a restart, a tag, and which wall comes then. */
    boolean isToldByTitle() {
        return title.filter(told -> told.about() == Title.About.A_CHANGE).isPresent();
    }

    /** Whether a call can be made. */
    boolean allows(Offer offer) {
        return offer.startSeconds() >= earliestSeconds;
    }
}
