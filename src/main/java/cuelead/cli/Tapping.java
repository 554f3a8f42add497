package cuelead.cli;

import cuelead.practice.LiveBeats;
import cuelead.report.Refused;
import cuelead.song.BeatsInHand;
import cuelead.song.Ear;
import cuelead.song.Hearing.Stretch;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.steer.DeviceChoice;
import cuelead.steer.LostDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Plays a song on a terminal whose user taps its beats. */
final class Tapping {
    private static final List<String> WHAT_TO_DO = List.of(
            "Begin softly: long loud sound harms hearing.",
            "space   tap every beat for some bars, beginning with a count 1, and stop",
            "1 count 1 is now   h half a beat   + twice as many   - half as many",
            "3 two for three   m, M count a beat earlier, later   u take back   k click",
            "left, right 5 seconds   p pause   Enter keep and end   q end");

    private static final String WITHOUT_KEYS =
            "Tapping needs a terminal whose keys can be read; there, start it again, or put the beats"
                    + " right with options such as --half-beat.";

    private static final String WITHOUT_DEVICE = " Or put the beats right with options such as --half-beat.";

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
        KeyedLine screen = new KeyedLine(surroundings, WITHOUT_KEYS);
        DeviceChoice choice = sound.choose(surroundings.devices());
        ExecutorService background = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "cuelead-carry-taps");
            thread.setDaemon(true);
            return thread;
        });
        try (Song song = SongFile.open(file, Optional.empty())) {
            song.pcm().await(song.pcm().lengthFrames());
            try (SpeakerPair speakers = opened(choice, song)) {
                WHAT_TO_DO.forEach(surroundings.err()::println);
                LiveBeats live = new LiveBeats(song, speakers.main(), speakers.ear(), sound.delays());
                TapDesk desk =
                        new TapDesk(file, live, new BeatsInHand(beats, List.of()), within, new Ear(), background);
                screen.show(desk, new LostDevices(speakers));
                speakers.stop();
                return desk.isKept() ? Optional.of(desk.hand()) : Optional.empty();
            }
        } finally {
            background.shutdownNow();
        }
    }

    private SpeakerPair opened(DeviceChoice choice, Song song) throws Refused {
        try {
            return choice.open(surroundings.devices(), song.pcm().rate());
        } catch (Refused none) {
            throw new Refused(none.getMessage() + WITHOUT_DEVICE, none);
        }
    }
}
