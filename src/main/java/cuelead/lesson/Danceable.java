package cuelead.lesson;

import cuelead.lesson.Pass.Over;
import cuelead.plan.Timeline;

/** What of a dance is ever danced over its music, or where there is none, over clicks. */
record Danceable(Timeline timeline) {
    /** @param column of the pass's piece */
    void check(Pass pass, int column) throws LessonMistake {
        if (pass.piece() instanceof Piece.Wall wall && wall.wall() > timeline.walls()) {
            String walls = timeline.walls() == 1 ? "only wall 1 is" : "walls 1 to " + timeline.walls() + " are";
            throw new LessonMistake(
                    column,
                    "There is no wall " + wall.wall() + ": " + walls + " danced before it ends.",
                    "Name one of them.");
        }
        if (pass.over() == Over.MUSIC && PiecePlace.of(pass.piece(), timeline).isEmpty()) {
            String piece = new PieceWords(timeline.dance()).written(pass.piece());
            throw new LessonMistake(
                    column,
                    "The music ends before all of " + piece + " is danced.",
                    "Write clicks instead of music, or choose another piece.");
        }
    }
}
