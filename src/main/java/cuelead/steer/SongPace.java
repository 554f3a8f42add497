package cuelead.steer;

import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.util.Optional;

/**
 * How fast a song is played.
 *
 * @param speed of it
 * @param own   its own tempo
 */
public record SongPace(Speed speed, Tempo own) {
    /** In parts of {@link Speed#UNIT}. */
    private static final int STEP = Speed.UNIT / 20;

    /** @param playedTempo the tempo at that speed */
    static SongPace of(Speed speed, Tempo playedTempo) {
        return new SongPace(speed, new Tempo(playedTempo.beatsPerMinute() / speed.ratio()));
    }

    /** At the next step of a twentieth, so that the original speed is met again; the same at the end of the range. */
    SongPace faster() {
        return at(Math.floorDiv(speed.songFramesInUnit(), STEP) + 1);
    }

    /** The same downwards. */
    SongPace slower() {
        return at(-Math.floorDiv(-speed.songFramesInUnit(), STEP) - 1);
    }

    /** At a tempo, or the next one to it that the song can have. */
    SongPace at(Tempo tempo) {
        return held(Math.round(Speed.UNIT * tempo.beatsPerMinute() / own.beatsPerMinute()));
    }

    private SongPace at(int steps) {
        return held((long) steps * STEP);
    }

    private SongPace held(long songFramesInUnit) {
        long held = Math.max(
                Speed.SLOWEST.songFramesInUnit(), Math.min(Speed.FASTEST.songFramesInUnit(), songFramesInUnit));
        return new SongPace(new Speed(Math.toIntExact(held)), own);
    }

    /** {@code speed 0.75 (78 beats a minute)}; empty at its own speed, where the tempo is what dancers know. */
    Optional<String> told() {
        return speed.isOriginal()
                ? Optional.empty()
                : Optional.of("speed " + Told.decimal(speed.ratio()) + " ("
                        + Math.round(own.beatsPerMinute() * speed.ratio()) + " beats a minute)");
    }
}
