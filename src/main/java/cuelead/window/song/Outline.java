package cuelead.window.song;

import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.Pcm;
import cuelead.sound.Sound;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** How loud a song is where, in small steps, to be drawn. */
final class Outline {
    static final Outline NONE = new Outline(new float[0], 1);

    private static final double STEP_SECONDS = 0.02;
    private static final double LOUD_SHARE = 0.98;

    private final float[] levels;
    private final double stepSeconds;

    private Outline(float[] levels, double stepSeconds) {
        this.levels = levels;
        this.stepSeconds = stepSeconds;
    }

    /** Of a song's file, which is read to its end. */
    static Outline of(Path file) throws Refused, InterruptedException {
        try (Song song = SongFile.open(file, Optional.empty())) {
            song.pcm().await(song.pcm().lengthFrames());
            song.awaitLoaded();
            return of(song.pcm());
        }
    }

    /** Of a song that is wholly loaded; the loudest steps are 1. */
    static Outline of(Pcm pcm) {
        int step = pcm.rate().framesIn(STEP_SECONDS);
        float[] levels = new float[(int) (pcm.lengthFrames() / step)];
        float[] block = new float[step * Sound.CHANNELS];
        for (int i = 0; i < levels.length; i++) {
            pcm.copy((long) i * step, block, step);
            double power = 0;
            for (float sample : block) {
                power += sample * sample;
            }
            levels[i] = (float) Math.sqrt(power / block.length);
        }
        float loud = loud(levels);
        for (int i = 0; i < levels.length; i++) {
            levels[i] = Math.min(1, levels[i] / loud);
        }
        return new Outline(levels, (double) step / pcm.rate().hz());
    }

    /** As loud as the loudest steps but a few: single strokes must not make everything else small. */
    private static float loud(float[] levels) {
        float[] sorted = levels.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 1 : Math.max(Float.MIN_NORMAL, sorted[(int) (LOUD_SHARE * (sorted.length - 1))]);
    }

    /** The loudest step between two times, 0 to 1. */
    double between(double fromSeconds, double toSeconds) {
        int from = (int) Math.max(0, fromSeconds / stepSeconds);
        int to = (int) Math.min(levels.length, Math.max(from + 1, Math.ceil(toSeconds / stepSeconds)));
        float most = 0;
        for (int i = from; i < to; i++) {
            most = Math.max(most, levels[i]);
        }
        return most;
    }
}
