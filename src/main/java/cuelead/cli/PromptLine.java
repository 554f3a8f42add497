package cuelead.cli;

import cuelead.rehearse.PlannedCall;
import cuelead.steer.Told;
import cuelead.studio.RehearsalScene;

/** A moment of a rehearsal in one line: the place in the song, the call to breathe for, and the one behind it. */
final class PromptLine {
    private PromptLine() {}

    static String of(RehearsalScene scene) {
        PlannedCall place = scene.place();
        String where = (place.wall() > 0 ? "  wall " + place.wall() : "")
                + (place.section().isEmpty() ? "" : "  " + place.section());
        return Told.minutesAndSeconds(scene.songSeconds()) + where + "   " + prompted(scene);
    }

    private static String prompted(RehearsalScene scene) {
        return scene.prompted()
                .map(call -> "[ " + call.word() + " ]"
                        + scene.then().map(then -> "   then " + then.word()).orElse(""))
                .orElse("...");
    }
}
