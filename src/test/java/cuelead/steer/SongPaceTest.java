package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SongPaceTest {
    private static SongPace at(double ratio) {
        return SongPace.of(Speed.of(ratio), new Tempo(104 * ratio));
    }

    @Test
    void saysWhatTheDancersHear() {
        assertEquals(Optional.of("speed 0.75 (78 beats a minute)"), at(0.75).told());
        assertEquals(Optional.of("speed 1.1 (114 beats a minute)"), at(1.1).told());
        assertEquals(Optional.empty(), at(1).told());
    }

    @Test
    void goesByTwentiethsAndMeetsTheOwnSpeed() {
        assertEquals(Speed.of(0.75), at(0.8).slower().speed());
        assertEquals(Speed.of(0.8), at(0.83).slower().speed());
        assertEquals(Speed.of(0.85), at(0.83).faster().speed());
        assertEquals(Speed.ORIGINAL, at(0.99).faster().speed());
        assertEquals(Speed.ORIGINAL, at(1.01).slower().speed());
    }

    @Test
    void staysInTheRange() {
        assertEquals(Speed.SLOWEST, at(0.42).slower().speed());
        assertEquals(at(0.4), at(0.4).slower());
        assertEquals(at(1.25), at(1.25).faster());
    }
}
