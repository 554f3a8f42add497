package cuelead.cli;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A song with a click on each of its beats, to hear whether they are right. */
final class ClickTrack {
    /** The song steps back, so that clicks are heard through loud music. */
    private static final Levels LEVELS = new Levels(-8, 0, 0, 0);

    private ClickTrack() {}

    /** Writes it as a WAV file: a high click on the first of each phrase, or of each bar where there are no phrases. */
    static void write(Path songFile, BeatGrid beats, Path target) throws Refused, InterruptedException {
        try (Song song = SongFile.open(songFile, Optional.empty())) {
            SampleRate rate = song.pcm().rate();
            song.pcm().await(song.pcm().lengthFrames());
            MixPlan plan = MixPlan.whole(rate, Optional.of(song.pcm()), List.of(), clicks(beats, rate), LEVELS);
            new WavFile().write(new Mix(plan), rate, WavFormat.PCM_16, target);
        }
    }

    private static List<ClickAt> clicks(BeatGrid beats, SampleRate rate) {
        List<ClickAt> clicks = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            int number = beats.countInPhrase(i) > 0 ? beats.countInPhrase(i) : beats.beatInBar(i);
            clicks.add(new ClickAt(
                    rate.frameAt(beats.beatSeconds(i)), number == 1 ? ClickSound.ACCENTED : ClickSound.PLAIN));
        }
        return clicks;
    }
}
