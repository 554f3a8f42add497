package cuelead.cli;

import cuelead.practice.Delays;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Plays live. */
@Command(
        name = "play",
        header = "Play a song with its calls, live.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "The terminal shows wall, section, count, the call now and the call next, and what comes at the end of the"
                    + " wall.",
            "Keys: space pauses and goes on, left and right (or Page Up and Page Down, as a presenter's clicker"
                    + " sends) jump by sections, up and down by walls, ? shows all others, q quits."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead play cues/lamp-on-the-quay.txt",
            "  cuelead play my-sheet.txt my-song.mp3 --lead 4 --calls figures",
            "  cuelead play my-sheet.txt --tempo 96       to clicks, without music",
            "  cuelead play my-sheet.txt my-song.mp3 --from 60 --fade",
            "  cuelead play my-sheet.txt --side left      calls left, music right",
            "  cuelead play my-sheet.txt --ear earphone   calls in your ear only"
        })
final class PlayCommand implements Callable<Integer> {
    /** The usual cautions of a class. */
    static final List<String> CAUTION = List.of(
            "Begin softly: long loud sound harms hearing. Keep the floor clear, and",
            "take turns only as fast as is safe for you.");

    private final Surroundings surroundings;

    @Mixin
    private PracticeOptions options;

    @Mixin
    private SoundOptions sound;

    PlayCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        Wish wish = options.wish(sound);
        Delays delays = sound.delays();
        DeviceChoice choice = sound.choose(surroundings.devices());
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (OpenedKeys opened = OpenedKeys.of(surroundings);
                SpeakerOpening opening = SpeakerOpening.begin(surroundings.devices(), choice, wish.rate());
                Practice practice = start.prepare()) {
            LivePlay play = new LivePlay(
                    surroundings, practice, opening.at(practice.rate()), wish.callsGo(), delays, opened.keys());
            CAUTION.forEach(surroundings.err()::println);
            play.practise(wish);
            start.tellProblems(practice);
            start.remindOfErrors(practice);
        }
        return Failures.DONE;
    }
}
