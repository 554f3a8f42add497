package cuelead.cli;

import cuelead.practice.LiveBeats;
import cuelead.report.Refused;
import cuelead.song.BeatsInHand;
import cuelead.song.Ear;
import cuelead.song.Hearing.Stretch;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Plays a song on a terminal whose user taps its beats. */
final class Tapping {
    private static final long POLL_MILLIS = 16;
    private static final List<String> WHAT_TO_DO = List.of(
            "Begin softly: long loud sound harms hearing.",
            "space   tap every beat for some bars, beginning with a count 1, and stop",
            "1 count 1 is now   h half a beat   + twice as many   - half as many",
            "3 two for three   m, M count a beat earlier, later   u take back   k click",
            "left, right 5 seconds   p pause   Enter keep and end   q end");

    private final Surroundings surroundings;
    private final SoundOptions sound;

    Tapping(Surroundings surroundings, SoundOptions sound) {
        this.surroundings = surroundings;
        this.sound = sound;
    }

    /**
     * Lets the user put beats right by ear.
     *
     * @param within where; empty = everywhere
     * @return empty where the user keeps what there was
     */
    Optional<BeatsInHand> play(Path file, BeatGrid beats, Optional<Stretch> within)
            throws Refused, InterruptedException {
        checkTerminal();
        DeviceChoice choice = sound.choose(surroundings.devices());
        ExecutorService background = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "cuelead-carry-taps");
            thread.setDaemon(true);
            return thread;
        });
        try (Song song = SongFile.open(file, Optional.empty())) {
            song.pcm().await(song.pcm().lengthFrames());
            try (SpeakerPair speakers =
                    choice.open(surroundings.devices(), song.pcm().rate())) {
                WHAT_TO_DO.forEach(surroundings.err()::println);
                LiveBeats live = new LiveBeats(song, speakers.main(), sound.delays());
                TapDesk desk = new TapDesk(file, live, new BeatsInHand(beats, within), new Ear(), background);
                run(desk, new LostDevices(speakers));
                speakers.stop();
                return desk.isKept() ? Optional.of(desk.hand()) : Optional.empty();
            }
        } finally {
            background.shutdownNow();
        }
    }

    private void checkTerminal() throws Refused {
        Terminal terminal = surroundings.terminal();
        if (terminal.input() != Terminal.End.TERMINAL || terminal.output() != Terminal.End.TERMINAL) {
            throw noKeys();
        }
    }

    private static Refused noKeys() {
        return new Refused("Tapping needs a terminal whose keys can be read; there, start it again, or put the beats"
                + " right with options such as --half-beat.");
    }

    private void run(TapDesk desk, LostDevices lost) throws Refused, InterruptedException {
        Screen screen = new Screen(surroundings.out(), TerminalWidth.ofOutput(surroundings.environment()) - 1);
        try (RawKeys keys = RawKeys.open().orElseThrow(Tapping::noKeys)) {
            while (!desk.isEnded()) {
                keys.next(POLL_MILLIS).ifPresent(desk::obey);
                desk.tick();
                screen.show(desk.line());
                for (String news : lost.news()) {
                    screen.clear();
                    surroundings.err().print(news + "\r\n"); // a raw terminal does not go back by itself
                }
            }
        } finally {
            screen.clear();
        }
    }
}
