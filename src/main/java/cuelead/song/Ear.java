package cuelead.song;

import cuelead.dsp.beat.BandSpectrum;
import cuelead.dsp.beat.BeatNetwork;
import cuelead.dsp.beat.Rhythm;
import cuelead.dsp.beat.Rhythm.HeardBeat;
import cuelead.dsp.beat.RhythmSearch;
import cuelead.dsp.beat.Taps;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;

/** Hears the beats of song files. Safe on any thread; several songs may be heard at once. */
public final class Ear {
    /** Longer than any mix of an evening; only the sound's outline is held, so that length costs little. */
    private static final int MOST_SECONDS = 4 * 60 * 60;

    private static final int BLOCK_SAMPLES = 1 << 13;
    /** Reading a song takes about this share of the time, finding its beats the rest. */
    private static final double READING_SHARE = 0.5;

    private final RhythmSearch search = new RhythmSearch(BeatNetwork.load());

    /**
     * Listens to a song from beginning to end.
     *
     * @param progress told the share that is done, 0 to 1
     * @return empty where it has no steady beat
     * @throws Refused when the file cannot be read
     */
    public Optional<Hearing> listen(Path song, DoubleConsumer progress) throws Refused {
        BandSpectrum spectrum = read(song, done -> progress.accept(READING_SHARE * done));
        return search.find(spectrum, done -> progress.accept(READING_SHARE + (1 - READING_SHARE) * done))
                .map(Ear::hearing);
    }

    /**
     * Listens again, at the tempo of taps and through them.
     *
     * @return empty where the song is shorter than the taps
     */
    Optional<BeatGrid> follow(Path song, Taps taps) throws Refused {
        return search.follow(read(song, done -> {}), taps).map(Ear::hearing).map(Hearing::beats);
    }

    /**
     * How long a song is that can be listened to; it may be longer than one that is played.
     *
     * @throws Refused as {@link #listen}
     */
    public static double lengthSeconds(Path song) throws Refused {
        try (Decoder decoder = open(song)) {
            return decoder.rate().secondsAt(decoder.lengthFrames());
        } catch (IOException broken) {
            throw Refusals.unreadable(song, broken);
        }
    }

    private static Decoder open(Path song) throws Refused {
        return DecoderChoice.open(song, new Limits(MOST_SECONDS, () -> Long.MAX_VALUE), new Findings(song.toString()));
    }

    private static BandSpectrum read(Path song, DoubleConsumer progress) throws Refused {
        try (Decoder decoder = open(song)) {
            MonoStream stream = new MonoStream(decoder, BandSpectrum.RATE);
            BandSpectrum spectrum = new BandSpectrum();
            float[] block = new float[BLOCK_SAMPLES];
            for (int got = stream.read(block); got > 0; got = stream.read(block)) {
                spectrum.add(block, got);
                progress.accept((double) stream.framesDone() / stream.lengthFrames());
            }
            spectrum.finish();
            return spectrum;
        } catch (IOException broken) {
            throw Refusals.unreadable(song, broken);
        }
    }

    private static Hearing hearing(Rhythm rhythm) {
        List<HeardBeat> beats = rhythm.beats();
        BeatGrid grid = new BeatGrid(
                beats.stream().mapToDouble(HeardBeat::seconds).toArray(),
                beats.stream().mapToInt(HeardBeat::beatInBar).toArray(),
                beats.stream().mapToInt(HeardBeat::countInPhrase).toArray());
        return new Hearing(grid, UnsureStretches.of(beats), OptionalDouble.of(grid.beatSeconds(rhythm.entryBeat())));
    }
}
