package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BeatNetworkTest {
    private static final double TOLERANCE = 1e-4;
    private static final int GAIN = 10;

    /** The signal that vector.csv describes. */
    private static float[] signal() {
        float[] signal = new float[88_200];
        for (int k = 0; k < 8; k++) {
            double hz = k % 4 == 0 ? 55 : 80;
            for (int n = 0; n < 2_000; n++) {
                double seconds = n / 22_050.0;
                signal[11_025 * k + n] += (float) (Math.sin(2 * Math.PI * hz * seconds) * Math.exp(-seconds / 0.04));
            }
        }
        return signal;
    }

    /** A row of vector.csv, which the numpy forward pass made. */
    private static float[] row(String name) throws IOException {
        try (InputStream in = BeatNetworkTest.class.getResourceAsStream("vector.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String line = text.lines()
                    .filter(l -> l.startsWith(name + ","))
                    .findFirst()
                    .orElseThrow();
            double[] values = Arrays.stream(line.split(","))
                    .skip(1)
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            float[] row = new float[values.length];
            for (int i = 0; i < row.length; i++) {
                row[i] = (float) values[i];
            }
            return row;
        }
    }

    @Test
    void theFeatureIsTheReferences() throws IOException {
        float[] expected = row("feature of frame 25");
        float[][] frame = BandSpectrum.of(signal()).compressed(GAIN, 25, 1);
        assertEquals(expected.length, frame.length);
        for (int band = 0; band < expected.length; band++) {
            assertEquals(expected[band], frame[band][0], TOLERANCE, "band " + band);
        }
    }

    @Test
    void theForwardPassIsTheReferences() throws IOException {
        Activations heard = BeatNetwork.load().hear(BandSpectrum.of(signal()), done -> {});
        assertArrayEquals(row("beat"), heard.beat(), (float) TOLERANCE);
        assertArrayEquals(row("downbeat"), heard.downbeat(), (float) TOLERANCE);
        assertArrayEquals(row("phrase"), heard.phrase(), (float) TOLERANCE);
    }

    @Test
    void theFrontLayersBlocksLeaveNoSeam() {
        BeatNetwork network = BeatNetwork.load();
        BandSpectrum song = BandSpectrum.of(signal());
        Activations whole = network.hear(song, 1_000, done -> {});
        Activations inBlocks = network.hear(song, 37, done -> {});
        assertArrayEquals(whole.beat(), inBlocks.beat(), 1e-6f);
        assertArrayEquals(whole.downbeat(), inBlocks.downbeat(), 1e-6f);
    }
}
