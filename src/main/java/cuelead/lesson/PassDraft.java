package cuelead.lesson;

import cuelead.lesson.Pass.Over;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;

/** What a line has said of its pass so far. */
final class PassDraft {
    final Once<Piece> piece = new Once<>("a pass has one piece of the dance");
    final Once<Pace> pace = new Once<>("a pass has one pace");
    final Once<Integer> times = new Once<>("a pass goes so many times or so many");
    final Once<Over> over = new Once<>("a pass is danced to clicks or to music");
    final Once<CallLevel> level = new Once<>("a pass has one level of calls");
    final Once<Fading> fading = new Once<>("that is said already");

    /**
     * The pass; what is left out is as usual.
     *
     * @param pieces what to try where no piece is named
     */
    Pass pass(String pieces) throws LessonMistake {
        if (piece.value().isEmpty()) {
            throw new LessonMistake(1, "This line names no piece of the dance.", pieces);
        }
        Over danced = over.value().orElse(Over.CLICKS);
        return new Pass(
                piece.value().get(),
                pace.value().orElse(Pace.usual(danced)),
                times.value().orElse(1),
                danced,
                level.value().orElse(CallLevel.WORDS),
                fading.value().orElse(Fading.STEADY));
    }
}
