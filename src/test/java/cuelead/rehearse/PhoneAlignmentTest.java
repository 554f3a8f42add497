package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dsp.speech.PhoneOdds;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class PhoneAlignmentTest {
    private static final int T = PhoneOdds.phone("t");
    private static final int OW = PhoneOdds.phone("ow");

    private static PhoneOdds toe(int silentFrames, int frames) {
        float[][] odds = new float[PhoneOdds.phones()][frames];
        for (float[] phone : odds) {
            Arrays.fill(phone, -5);
        }
        for (int frame = 0; frame < frames; frame++) {
            int now = frame < silentFrames || frame >= silentFrames + 30
                    ? PhoneOdds.SILENCE
                    : frame < silentFrames + 8 ? T : OW;
            odds[now][frame] = 0;
        }
        return new PhoneOdds(odds);
    }

    private static int[] starts(PhoneOdds odds, int from, int to) {
        return new PhoneAlignment(odds, List.of(T, OW)).starts(from, to);
    }

    @Test
    void soundsLieWhereTheyFit() {
        assertArrayEquals(new int[] {20, 28, 50}, starts(toe(20, 80), 10, 70));
    }

    @Test
    void aWordMayFillTheStretch() {
        assertArrayEquals(new int[] {20, 28, 50}, starts(toe(20, 80), 20, 50));
        assertArrayEquals(new int[] {25, 28, 40}, starts(toe(20, 80), 25, 40));
    }

    @Test
    void everySoundHasAFrame() {
        assertArrayEquals(new int[] {0, 1, 2}, starts(toe(20, 80), 0, 2));
    }

    @Test
    void aWordWithoutVowelsIsFeltAtItsBeginning() {
        Centres centres = new Centres(toe(20, 80), List.of(new Pronounced("t", List.of(T))));
        assertEquals(0.2, centres.centred(new HeardWord("t", 0.2, 0.2, 0.3)).centreSeconds());
    }

    @Test
    void theCentreIsMarcus() {
        Centres centres = new Centres(toe(20, 80), List.of(new Pronounced("toe", List.of(T, OW))));
        double centre = 0.195 + 0.65 * 0.08 + 0.25 * 0.22;
        assertEquals(
                centre, centres.centred(new HeardWord("toe", 0.22, 0.22, 0.48)).centreSeconds(), 1e-9);
    }
}
