package cuelead.studio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.practice.SongMemory;
import cuelead.rehearse.PlannedCall;
import cuelead.studio.ReviewedDance.Beat;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalSoundTest {
    private static final PlannedCall ROCK = PlannedCall.of("rock", 3, OptionalDouble.of(4), 2, 1, "S1");
    private static final PlannedCall SOON = PlannedCall.of("recover", 3.2, OptionalDouble.of(4.5), 2, 1, "S1");
    private static final PlannedCall FIRST = PlannedCall.of("touch", 0.2, OptionalDouble.of(1), 2, 1, "S1");

    @TempDir
    private Path temp;

    private float[] heard(List<Beat> beats, List<PlannedCall> spoken) throws Exception {
        ReviewedDance dance = new ReviewedDance(List.of(FIRST, ROCK, SOON), Optional.empty(), beats);
        RehearsalSound sound =
                RehearsalSound.of(dance, spoken, new SongMemory(new Places(temp, temp), Progress.UNTOLD));
        assertEquals(44_100, sound.rate().hz());
        float[] stereo = new float[2 * 44_100 * 5];
        sound.mix().read(stereo, 44_100 * 5);
        return stereo;
    }

    private static double loudest(float[] stereo, double fromSeconds, double toSeconds) {
        double loudest = 0;
        for (int frame = (int) (fromSeconds * 44_100); frame < toSeconds * 44_100; frame++) {
            loudest = Math.max(loudest, Math.abs(stereo[2 * frame]));
        }
        return loudest;
    }

    @Test
    void beatsAreClickedWhereThereIsNoMusic() throws Exception {
        float[] heard = heard(List.of(new Beat(1, true), new Beat(1.5, false)), List.of());
        assertEquals(0, loudest(heard, 0, 0.99));
        assertTrue(loudest(heard, 1, 1.05) > 0.05);
        assertTrue(loudest(heard, 1.5, 1.55) > 0.03);
        assertEquals(0, loudest(heard, 1.7, 5));
    }

    @Test
    void aHardCallIsSpokenBeforeItsBreathAndNeverAtItsTime() throws Exception {
        float[] heard = heard(List.of(), List.of(FIRST, ROCK, SOON));
        assertTrue(loudest(heard, 2, 2.66) > 0.1);
        // there was no time for the first call and none for the one right behind the second
        assertEquals(0, loudest(heard, 0, 2));
        assertEquals(0, loudest(heard, 2.9, 5));
    }
}
