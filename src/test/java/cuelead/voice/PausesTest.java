package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PausesTest {
    private static final List<SpokenPhone> PHONES = List.of(
            new SpokenPhone("pau", 0, 0.2, false, -1),
            new SpokenPhone("r", 0.2, 0.3, true, 0),
            new SpokenPhone("aa", 0.3, 0.5, true, 0),
            new SpokenPhone("pau", 0.5, 0.7, false, -1));

    @Test
    void humInPausesGoesAndTheWordStays() {
        MonoSound hum = Sounds.sound(Sounds.noise(0.7, 0.1));
        float[] silenced = Pauses.silenced(hum, PHONES).samples();
        for (int i = 0; i < silenced.length; i++) {
            double seconds = Sounds.RATE.secondsAt(i);
            if (seconds >= 0.2 && seconds <= 0.5) {
                assertEquals(hum.samples()[i], silenced[i], 0, "in the word at " + seconds);
            }
            if (seconds < 0.189 || seconds > 0.541) {
                assertEquals(0, silenced[i], 0, "in a pause at " + seconds);
            }
        }
    }

    @Test
    void withoutAWordEverythingIsPause() {
        MonoSound hum = Sounds.sound(Sounds.noise(0.2, 0.1));
        float[] silenced = Pauses.silenced(hum, List.of(PHONES.get(0))).samples();
        for (float sample : silenced) {
            assertEquals(0, sample, 0);
        }
    }

    @Test
    void aSoundThatTellsNoPhonesIsLeft() {
        MonoSound hum = Sounds.sound(Sounds.noise(0.2, 0.1));
        assertEquals(hum, Pauses.silenced(hum, List.of()));
    }
}
