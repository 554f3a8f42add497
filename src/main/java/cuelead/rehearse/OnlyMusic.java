package cuelead.rehearse;

import cuelead.dsp.ComplexFft;
import cuelead.voice.MonoSound;
import java.util.OptionalDouble;

/**
 * From where on a take holds nothing but the music, as it was played: then what recorded it was no microphone but the
 * computer's own sound, or one that was unplugged and gave way to that. Found by the correlation of both at the best shift.
 */
public final class OnlyMusic {
    private static final double SEGMENT_SECONDS = 4;
    /** The take may be so much earlier or later than the music. */
    private static final double SHIFT_SECONDS = 1.5;
    /** Of 1. Music that came through a room and a microphone, or with somebody who calls, is less like itself. */
    private static final double ALIKE = 0.93;

    private static final double FAINTEST_POWER = 1e-6;

    private final MonoSound take;
    private final MonoSound music;
    private final int segment;
    private final int shift;
    private final ComplexFft fft;
    private final int size;

    private OnlyMusic(MonoSound take, MonoSound music) {
        this.take = take;
        this.music = music;
        segment = take.rate().framesIn(SEGMENT_SECONDS);
        shift = take.rate().framesIn(SHIFT_SECONDS);
        size = Integer.highestOneBit(segment + 2 * shift) * 2;
        fft = new ComplexFft(size);
    }

    /**
     * The second of the take; empty where its end is no such music.
     *
     * @param music at the take's rate
     */
    public static OptionalDouble fromSeconds(MonoSound take, MonoSound music) {
        OnlyMusic search = new OnlyMusic(take, music);
        int from = take.frames();
        while (from - search.segment >= 0 && search.isMusic(from - search.segment)) {
            from -= search.segment;
        }
        boolean isFromBeginning = from < search.segment && from < take.frames();
        if (isFromBeginning) {
            return OptionalDouble.of(0);
        }
        return from < take.frames() ? OptionalDouble.of(take.rate().secondsAt(from)) : OptionalDouble.empty();
    }

    /** Cross-correlation by the transform: the take's segment against the music around it. */
    private boolean isMusic(int first) {
        float[] re = new float[size];
        float[] im = new float[size];
        float[] musicRe = new float[size];
        float[] musicIm = new float[size];
        double takePower = 0;
        for (int i = 0; i < segment; i++) {
            re[i] = take.samples()[first + i];
            takePower += re[i] * re[i];
        }
        for (int i = 0; i < segment + 2 * shift; i++) {
            musicRe[i] = musicAt(first - shift + i);
        }
        if (takePower < FAINTEST_POWER * segment) {
            return false;
        }
        fft.forward(re, im);
        float[] played = musicRe.clone();
        fft.forward(musicRe, musicIm);
        for (int i = 0; i < size; i++) {
            float real = musicRe[i] * re[i] + musicIm[i] * im[i];
            musicIm[i] = musicIm[i] * re[i] - musicRe[i] * im[i];
            musicRe[i] = real;
        }
        fft.inverse(musicRe, musicIm);
        return best(musicRe, played, takePower) > ALIKE;
    }

    private double best(float[] products, float[] played, double takePower) {
        double musicPower = 0;
        for (int i = 0; i < segment; i++) {
            musicPower += played[i] * played[i];
        }
        double best = 0;
        for (int lag = 0; lag < 2 * shift; lag++) {
            if (musicPower > FAINTEST_POWER * segment) {
                best = Math.max(best, Math.abs(products[lag]) / size / Math.sqrt(musicPower * takePower));
            }
            musicPower += played[lag + segment] * played[lag + segment] - played[lag] * played[lag];
        }
        return best;
    }

    private float musicAt(int frame) {
        return frame >= 0 && frame < music.frames() ? music.samples()[frame] : 0;
    }
}
