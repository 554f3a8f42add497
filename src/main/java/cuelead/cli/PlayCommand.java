package cuelead.cli;

import cuelead.practice.Wish;
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
                    + " sends) jump by sections, up and down by walls, ? shows all others, q quits.",
            "Where playing begins, music rises within a second and a half, so that nobody is startled."
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
        new LiveStart(surroundings, wish, sound).play(practice -> play -> play.practise());
        return Failures.DONE;
    }
}
