package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.IntegratedLoudness;
import cuelead.sound.Pcm;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SongLoudnessTest {
    private static final SampleRate RATE = new SampleRate(44_100);

    private static float[] sine(double hz, double amplitude, int frames) {
        float[] stereo = new float[2 * frames];
        for (int i = 0; i < frames; i++) {
            stereo[2 * i] = (float) (amplitude * Math.sin(2 * Math.PI * hz * i / RATE.hz() + Math.PI / 4));
        }
        return stereo;
    }

    /** ITU-R BS.1770-4, annex 1: a sine of 997 Hz at full scale on the left channel reads -3.01 LKFS. */
    @Test
    void measuresTheRecommendationsSine() throws Exception {
        SongLoudness loudness = measured(sine(997, 1, 5 * 44_100));
        assertEquals(-3.01, IntegratedLoudness.lufs(loudness.powers().whole()).orElseThrow(), 0.02);
        assertEquals(50, loudness.powers().blocks());
        assertEquals(1, loudness.samplePeak(), 1e-3);
        assertEquals(0, loudness.truePeakDbtp(), 0.1);
    }

    /** A sine at a quarter of the rate, 45 degrees off, touches 3.01 dB more between its samples than on them. */
    @Test
    void seesWhatLiesBetweenTheSamples() throws Exception {
        SongLoudness loudness = measured(sine(11_025, 0.5, 44_100));
        assertEquals(0.5 / Math.sqrt(2), loudness.samplePeak(), 1e-3);
        assertEquals(20 * Math.log10(0.5), loudness.truePeakDbtp(), 0.2);
    }

    @Test
    void silenceHasAFiniteLevel() throws Exception {
        SongLoudness loudness = measured(new float[2 * 44_100]);
        assertEquals(-200, loudness.truePeakDbtp());
        assertEquals(0, loudness.samplePeak());
    }

    @Test
    void tellsItsProgressUpToTheEnd() throws Exception {
        List<Double> told = new ArrayList<>();
        SongLoudness.measure(Sounds.pcm(RATE, sine(997, 0.1, 100_000)), told::add);
        assertEquals(1.0, told.get(told.size() - 1));
        assertEquals(told.stream().sorted().toList(), told);
    }

    @Test
    void aSongThatWasClosedBeforeItsEndIsNotMeasured() throws Exception {
        Pcm pcm = new Pcm(RATE, 100_000);
        pcm.append(new float[2_000], 1_000);
        pcm.finish();
        assertEquals(Optional.empty(), SongLoudness.measure(pcm, share -> {}));
    }

    @Test
    void theBlockPowersAreACopy() throws Exception {
        SongLoudness loudness = measured(sine(997, 0.5, 44_100));
        loudness.powers().whole()[3] = 99;
        assertTrue(loudness.powers().whole(3) < 1);
    }

    private static SongLoudness measured(float[] stereo) throws InterruptedException {
        return SongLoudness.measure(Sounds.pcm(RATE, stereo), share -> {}).orElseThrow();
    }
}
