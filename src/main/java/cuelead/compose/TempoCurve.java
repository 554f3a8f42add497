package cuelead.compose;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.Arrays;
import java.util.Random;

/**
 * The tempo of every moment of a song, and its integral: where in time each moment falls. The tempo runs straight
 * from beat to beat, so a beat from tempo v to tempo w takes 60 ln(w / v) / (w - v) seconds, exactly.
 *
 * <p>Immutable. Made with {@link StrictMath}, so that it is the same on every machine.
 */
final class TempoCurve {
    private static final double SECONDS_PER_MINUTE = 60;
    /** Beats over which a change of push is spread. */
    private static final int EASING_BEATS = 16;
    /** Lengths of the waves of a live band's wandering, in beats, and their shares; no common multiple nearby. */
    private static final double[] WAVE_BEATS = {29, 53, 97};

    private static final double[] WAVE_SHARES = {0.25, 0.35, 0.4};
    /** Below this share the tempo counts as even within a beat: the logarithm would lose digits. */
    private static final double EVEN = 1e-9;

    private final double[] beatsPerMinute;
    private final double[] seconds;

    private TempoCurve(double[] beatsPerMinute) {
        this.beatsPerMinute = beatsPerMinute;
        this.seconds = new double[beatsPerMinute.length];
        for (int i = 1; i < seconds.length; i++) {
            seconds[i] = seconds[i - 1] + segmentSeconds(i - 1, 1);
        }
    }

    /** The curve of a score, from the first beat to the end of the arrangement. */
    static TempoCurve of(Score.Header header, Arrangement arrangement) {
        int beats = (int) Math.ceil(arrangement.length().toDecimal());
        double[] push = eased(pushes(arrangement, beats + 1));
        double most = Arrays.stream(push).map(Math::abs).max().orElse(0);
        double[] wander = wander(header.seed(), beats + 1, Math.max(0, header.drift() - most));
        double[] tempos = new double[beats + 1];
        for (int i = 0; i <= beats; i++) {
            tempos[i] = header.tempo().beatsPerMinute() * (1 + push[i] + wander[i]);
        }
        return new TempoCurve(tempos);
    }

    private static double[] pushes(Arrangement arrangement, int size) {
        double[] push = new double[size];
        for (Arrangement.Stretch stretch : arrangement.stretches()) {
            int start = (int) stretch.start().beatIndex();
            Arrays.fill(push, Math.min(start, size), size, stretch.push());
        }
        return push;
    }

    /** A running mean, so that no push comes at a stroke. */
    private static double[] eased(double[] push) {
        double[] eased = new double[push.length];
        for (int i = 0; i < push.length; i++) {
            double sum = 0;
            for (int k = -EASING_BEATS / 2; k <= EASING_BEATS / 2; k++) {
                sum += push[Math.max(0, Math.min(push.length - 1, i + k))];
            }
            eased[i] = sum / (EASING_BEATS + 1);
        }
        return eased;
    }

    private static double[] wander(long seed, int size, double most) {
        Random random = new Random(seed);
        double[] phases = random.doubles(WAVE_BEATS.length, 0, 2 * Math.PI).toArray();
        double[] wander = new double[size];
        for (int i = 0; i < size; i++) {
            for (int wave = 0; wave < WAVE_BEATS.length; wave++) {
                double angle = phases[wave] + 2 * Math.PI * i / WAVE_BEATS[wave];
                wander[i] += most * WAVE_SHARES[wave] * StrictMath.sin(angle);
            }
        }
        return wander;
    }

    /** Beats a minute at a position within the song. */
    double beatsPerMinuteAt(BeatPosition position) {
        int i = segment(position);
        double fraction = position.since(BeatPosition.atBeat(i)).toDecimal();
        return beatsPerMinute[i] + fraction * (beatsPerMinute[i + 1] - beatsPerMinute[i]);
    }

    /** Seconds from the first beat; goes on at the edge tempo before the first beat and after the end. */
    double secondsAt(BeatPosition position) {
        int i = segment(position);
        double fraction = position.since(BeatPosition.atBeat(i)).toDecimal();
        if (fraction < 0) {
            return fraction * SECONDS_PER_MINUTE / beatsPerMinute[0];
        }
        if (fraction > 1) {
            return seconds[i + 1] + (fraction - 1) * SECONDS_PER_MINUTE / beatsPerMinute[i + 1];
        }
        return seconds[i] + segmentSeconds(i, fraction);
    }

    /** Seconds of a whole beat of the song, 0 = first. */
    double secondsOfBeat(int beat) {
        return secondsAt(BeatPosition.atBeat(beat));
    }

    private int segment(BeatPosition position) {
        return (int) Math.max(0, Math.min(seconds.length - 2L, Math.floorDiv(position.ticks(), Beats.TICKS_PER_BEAT)));
    }

    private double segmentSeconds(int i, double fraction) {
        double from = beatsPerMinute[i];
        double rise = beatsPerMinute[i + 1] - from;
        if (Math.abs(rise) < EVEN * from) {
            return SECONDS_PER_MINUTE * fraction / from;
        }
        return SECONDS_PER_MINUTE * StrictMath.log1p(fraction * rise / from) / rise;
    }
}
