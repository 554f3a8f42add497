package cuelead.sound;

import java.util.Optional;

/**
 * An order to a {@link LiveMix}: at a frame of the song go over to another plan, at another or the same frame.
 *
 * @param number   tells it from other changes of the same mix; and is met again in its {@link Route}
 * @param atFrame  frame of the song on the way that is heard before, straight on from what is heard when the change
 *                 is ordered, also where a loop goes back on the way; when the mix has passed it, it goes over at
 *                 once and {@code toFrame} moves as much, so that beats stay where they would be
 * @param plan     what is heard from then on
 * @param toFrame  frame of that plan
 * @param loop     what of it is repeated
 */
public record Change(int number, long atFrame, MixPlan plan, long toFrame, Optional<Loop> loop) {
    /**
     * What is heard again and again.
     *
     * @param fromFrame frame of the song to go back to
     * @param endFrame  one past the last frame that is heard; after {@code fromFrame}
     */
    public record Loop(long fromFrame, long endFrame) {
        public Loop {
            if (endFrame <= fromFrame) {
                throw new IllegalArgumentException("a loop from frame " + fromFrame + " to frame " + endFrame);
            }
        }
    }
}
