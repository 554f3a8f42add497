package cuelead.studio;

import cuelead.output.GrowingTake;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * Puts what the microphone hears into a take whose every frame belongs to a frame of the song, also where the speakers broke
 * off: what was heard while the song stood still is left out, and silence stands where it went on unheard. For one thread.
 */
final class SongTake implements AutoCloseable {
    /** The clocks are compared so long before it is believed that the song has moved. */
    private static final double SETTLING_SECONDS = 1.5;

    private static final double MOVED_SECONDS = 0.003;

    private final GrowingTake file;
    private final MicrophoneLine line;
    private final RoundTrip roundTrip;
    private final SampleRate rate;
    private final double begunFrames;
    /** The song's first frame, in the stream that is played. */
    private final long songFrame;

    private double clockFrames;
    private double movedFrames;
    private boolean isSettling;
    private long settledFrame;
    private float[] waiting = new float[0];
    private float peak;

    /**
     * Begins one.
     *
     * @param begunFrames how much later the microphone's frames are than those of the stream, by their clocks
     */
    SongTake(GrowingTake file, MicrophoneLine line, RoundTrip roundTrip, long songFrame, double begunFrames) {
        this.file = file;
        this.line = line;
        this.roundTrip = roundTrip;
        this.songFrame = songFrame;
        this.begunFrames = begunFrames;
        rate = line.rate();
        clockFrames = begunFrames;
    }

    /** The speakers broke off, or are gone: as long as this is said, nothing is known of the song's place. */
    void broken() {
        if (!isSettling) {
            clockFrames = line.offsetFrames();
        }
        isSettling = true;
        line.readAnew();
        settledFrame = line.frames() + rate.frameAt(SETTLING_SECONDS);
    }

    /** Adds what was heard last. */
    void add(float[] heard) throws Refused {
        for (float sample : heard) {
            peak = Math.max(peak, Math.abs(sample));
        }
        if (!isSettling) {
            write(heard, line.frames() - heard.length);
            return;
        }
        int before = waiting.length;
        waiting = Arrays.copyOf(waiting, before + heard.length);
        System.arraycopy(heard, 0, waiting, before, heard.length);
        if (line.frames() >= settledFrame) {
            settle();
        }
    }

    private void settle() throws Refused {
        isSettling = false;
        double moved = line.offsetFrames() - clockFrames;
        if (line.readings() > 0 && Math.abs(moved) > MOVED_SECONDS * rate.hz()) {
            movedFrames += moved;
            clockFrames += moved;
        }
        float[] late = waiting;
        waiting = new float[0];
        write(late, line.frames() - late.length);
    }

    private void write(float[] heard, long firstFrame) throws Refused {
        long at = firstFrame - songFrame - Math.round(begunFrames + movedFrames);
        int skipped = (int) Math.max(0, Math.min(heard.length, file.frames() - at));
        long missing = at + skipped - file.frames();
        if (missing > 0) {
            file.write(new float[Math.toIntExact(missing)], 0, Math.toIntExact(missing));
        }
        file.write(heard, skipped, heard.length - skipped);
    }

    /** How late it is against the song. */
    double roundTripSeconds() {
        double clock = isSettling ? clockFrames : line.offsetFrames();
        return roundTrip.of(begunFrames, clock - movedFrames, rate);
    }

    /** How much of it is in the file. */
    double seconds() {
        return rate.secondsAt(file.frames());
    }

    /** The loudest so far. */
    float peak() {
        return peak;
    }

    @Override
    public void close() throws Refused {
        if (isSettling) {
            settle();
        }
        file.roundTrip(roundTripSeconds());
        file.close();
    }
}
