package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.FakeSpeakers;
import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

class AlignmentTest {
    private static final SampleRate RATE = new SampleRate(22_050);

    private final FakeSpeakers main = new FakeSpeakers(RATE);
    private final FakeSpeakers ear = new FakeSpeakers(RATE);

    @Test
    void clicksAreAsFarApartAsTheDelaysSay() {
        Alignment alignment = new Alignment(main, ear, new Delays(0, 0.1), RATE);
        hear(alignment, 5);
        assertEquals(-0.1, earAfterMain(), 1e-3);
        alignment.delays(new Delays(0.05, 0));
        hear(alignment, 5);
        assertEquals(0.05, earAfterMain(), 1e-3);
    }

    private void hear(Alignment alignment, double seconds) {
        for (double passed = 0; passed < seconds; passed += 0.02) {
            main.hear(0.02);
            ear.hear(0.02);
            alignment.tick();
        }
    }

    private double earAfterMain() {
        return lastClickSeconds(ear) - lastClickSeconds(main);
    }

    /** Where the last click begins that was heard whole; the attack of a click is its loudest part. */
    private static double lastClickSeconds(FakeSpeakers speakers) {
        float[] heard = speakers.heard();
        int from = heard.length - 2 * RATE.framesIn(1.3);
        int frame = from / 2;
        while (Math.abs(heard[2 * frame]) < 0.02) {
            frame++;
        }
        return RATE.secondsAt(frame);
    }
}
