package cuelead.steer;

import cuelead.dance.Counts;
import cuelead.plan.Timeline;
import cuelead.practice.LivePractice;
import cuelead.practice.MovedWall;
import cuelead.time.Beats;
import java.util.function.Consumer;

/** Gives a user's orders that move the dance against the music, and says what was done. */
public final class Realigning {
    private final LivePractice practice;
    private final Runnable moved;
    private final Consumer<String> told;

    /**
     * For a practice that plays.
     *
     * @param moved to be run when the dance has been moved: that leaves what is repeated
     * @param told  gets what was done, as soon as it is
     */
    Realigning(LivePractice practice, Runnable moved, Consumer<String> told) {
        this.practice = practice;
        this.moved = moved;
        this.told = told;
    }

    void obey(Order order) {
        switch (order) {
            case COUNT_ONE_IS_NOW -> done("Count 1 is now.", practice::countOneIsNow);
            case BEAT_EARLIER -> done("The dance is a beat earlier.", () -> practice.moveDance(beats(-1)));
            case BEAT_LATER -> done("The dance is a beat later.", () -> practice.moveDance(beats(1)));
            case EIGHT_EARLIER -> done("The dance is " + section() + " earlier.", () -> practice.moveDance(eight(-1)));
            case EIGHT_LATER -> done("The dance is " + section() + " later.", () -> practice.moveDance(eight(1)));
            case WALL_EARLIER -> moveByWall(-1, "The dance is a wall earlier.");
            case WALL_LATER -> moveByWall(1, "The dance is a wall later.");
            case TAKE_REALIGNMENT_BACK -> takeBack();
            default -> throw new IllegalArgumentException("moves nothing: " + order);
        }
    }

    private void done(String what, Runnable action) {
        moved.run();
        action.run();
        told.accept(what + " (u takes it back)");
    }

    private void moveByWall(int walls, String what) {
        practice.moveDanceByWall(walls, came -> {
            if (came == MovedWall.MOVED) {
                done(what, () -> {});
            } else {
                told.accept("No wall would be left before the music ends.");
            }
        });
    }

    private void takeBack() {
        practice.takeRealignmentBack(which -> {
            if (which != LivePractice.TakenBack.NOTHING) {
                moved.run();
            }
            told.accept(JumpWords.takenBack(which));
        });
    }

    private static Beats beats(int beats) {
        return new Beats(beats * Beats.ONE.ticks());
    }

    private Beats eight(int sections) {
        Timeline timeline = practice.heard().timeline();
        return timeline.beatsOf(Counts.of(timeline.dance().header().metre().countsInSection()))
                .times(sections);
    }

    private String section() {
        int counts = practice.heard().timeline().dance().header().metre().countsInSection();
        return counts == 8 ? "an eight" : counts + " counts";
    }
}
