package cuelead.dsp.speech;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The vector was written by {@code src/train/takes/export.py}, which says what the signal is. */
class SpeechNetworkTest {
    private static float[] signal() {
        float[] signal = new float[16_000];
        for (int n = 0; n < signal.length; n++) {
            double hz = 110 + 40 * (n / 4_000);
            signal[n] = n % 4_000 < 3_000 ? (float) (0.2 * Math.signum(Math.sin(2 * Math.PI * hz * n / 16_000))) : 0;
        }
        return signal;
    }

    private static Map<String, float[]> vector() throws IOException {
        Map<String, float[]> rows = new HashMap<>();
        try (InputStream in = SpeechNetworkTest.class.getResourceAsStream("network.csv")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> {
                        String[] parts = line.split(",", -1);
                        float[] values = new float[parts.length - 1];
                        for (int i = 0; i < values.length; i++) {
                            values[i] = Float.parseFloat(parts[i + 1]);
                        }
                        rows.put(parts[0], values);
                    });
        }
        return rows;
    }

    private static float[] column(float[][] rows, int frame) {
        float[] column = new float[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = rows[i][frame];
        }
        return column;
    }

    @Test
    void theFeatureIsTheTrainedOne() throws IOException {
        assertArrayEquals(vector().get("feature of frame 40"), column(MelBands.of(signal()), 40), 2e-3f);
    }

    @Test
    void theNetworkGivesWhatItGaveInTraining() throws IOException {
        float[][] given = SpeechNetwork.load().activations(MelBands.of(signal()));
        for (int frame : new int[] {0, 40, 77, 100}) {
            assertArrayEquals(vector().get("frame " + frame), column(given, frame), 2e-2f, "frame " + frame);
        }
    }

    @Test
    void gainDoesNotMatter() {
        float[] quiet = signal();
        for (int i = 0; i < quiet.length; i++) {
            quiet[i] *= 0.01f;
        }
        assertArrayEquals(column(MelBands.of(signal()), 30), column(MelBands.of(quiet), 30), 1e-3f);
    }

    @Test
    void silenceAndNothingCanBeHeard() {
        PhoneOdds odds = SpeechNetwork.load().hear(new float[800]).odds();
        assertEquals(6, odds.frames());
        assertTrue(Float.isFinite(odds.at(PhoneOdds.SILENCE, 3)));
        assertEquals(1, SpeechNetwork.load().hear(new float[0]).odds().frames());
    }

    @Test
    void soundsHaveNumbers() {
        assertEquals(PhoneOdds.SILENCE, PhoneOdds.phone("pau"));
        assertEquals(PhoneOdds.phone("ah"), PhoneOdds.phone("ax"));
        assertEquals(-1, PhoneOdds.phone("??"));
        long known = Arrays.stream(
                        "aa ae ah ao aw ay b ch d dh eh er ey f g hh ih iy jh k l m n ng ow oy p r s sh t th uh uw v w y z zh"
                                .split(" "))
                .filter(name -> PhoneOdds.phone(name) > 0)
                .count();
        assertEquals(PhoneOdds.phones() - 1, known);
    }
}
