package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import cuelead.dsp.beat.HeldLevel.Keeping;
import cuelead.dsp.beat.Rhythm.HeardBeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.IntFunction;

/** From what is heard of a whole song to its beats: every stage in its order. Safe on any thread. */
public final class RhythmSearch {
    /** Beats to the bar that are tried; six-eight and twelve-eight are heard at their felt beat, as 2 and 4. */
    private static final List<Integer> METRES = List.of(2, 3, 4);
    /** Share of the work: the network, then one part for each metre. */
    private static final double NETWORK_SHARE = 0.4;
    /** Mean support of a beat beyond the taps; in noise and in even tones it stays below (see {@link SteadyPart}). */
    private static final double LEAST_BEYOND_TAPS = 5;

    private final BeatNetwork network;
    private final OddsTable odds = OddsTable.load();

    public RhythmSearch(BeatNetwork network) {
        this.network = network;
    }

    /**
     * Finds the beats of the longest steady part.
     *
     * @param progress told the share that is done, 0 to 1
     * @return empty where no stretch of the song has a steady beat
     */
    public Optional<Rhythm> find(BandSpectrum song, DoubleConsumer progress) {
        return find(song, hear(song, progress), progress);
    }

    /** As {@link #find(BandSpectrum, DoubleConsumer)}, once the network has heard the song. */
    Optional<Rhythm> find(BandSpectrum song, Activations heard, DoubleConsumer progress) {
        float[][] loudness = song.loudness();
        List<PathBeat> beats = beats(song, loudness, heard, progress);
        return beats.isEmpty() ? Optional.empty() : Optional.of(counted(beats, loudness, heard));
    }

    /**
     * Finds the beats of the whole song at the tempo of the taps and through them.
     *
     * @return empty where the song is shorter than the taps, or where hardly a beat is heard but at the taps
     */
    public Optional<Rhythm> follow(BandSpectrum song, Taps taps) {
        Activations heard = network.hear(song, done -> {});
        Activations tapped = taps.over(heard);
        BarPath path = best(metre -> BarPointer.search(tapped, metre, taps.slowest(), taps.fastest()), done -> {});
        List<PathBeat> sounding = Sounding.only(path.beats(), song);
        return sounding.size() < taps.count() || !isHeardBeyond(taps, sounding)
                ? Optional.empty()
                : Optional.of(counted(sounding, song.loudness(), heard));
    }

    private static boolean isHeardBeyond(Taps taps, List<PathBeat> beats) {
        double support = beats.stream()
                .filter(beat -> beat.seconds() < taps.seconds(0) || beat.seconds() > taps.lastSeconds())
                .mapToDouble(PathBeat::support)
                .average()
                .orElse(LEAST_BEYOND_TAPS);
        return support >= LEAST_BEYOND_TAPS;
    }

    Activations hear(BandSpectrum song, DoubleConsumer progress) {
        return network.hear(song, done -> progress.accept(NETWORK_SHARE * done));
    }

    /**
     * The beats of the longest steady part, not counted yet; none where no stretch has a steady beat.
     *
     * @param loudness that of the song
     */
    List<PathBeat> beats(BandSpectrum song, float[][] loudness, Activations heard, DoubleConsumer progress) {
        BarPath path = likeliest(loudness, heard, progress);
        List<PathBeat> steady = SteadyPart.longest(Sounding.only(path.beats(), song));
        return PhaseHold.hold(SoftStretches.foundAnew(steady, heard), loudness);
    }

    private Rhythm counted(List<PathBeat> beats, float[][] loudness, Activations heard) {
        double[] seconds = beats.stream().mapToDouble(PathBeat::seconds).toArray();
        PhraseSearch.Counts found = PhraseSearch.search(new HeardBeats(loudness, heard, seconds), odds);
        // what sounds on a beat is where it was heard; dancers are given the evened time
        List<PathBeat> evened = EvenBeats.of(beats);
        List<HeardBeat> counted = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            int count = found.counts().get(i);
            int inBar = (count - 1) % found.beatsPerBar() + 1;
            counted.add(new HeardBeat(
                    evened.get(i).seconds(), inBar, count, beats.get(i).support()));
        }
        return new Rhythm(counted, found.beatsPerBar(), found.phraseBeats(), Entry.find(found));
    }

    private static BarPath likeliest(float[][] loudness, Activations heard, DoubleConsumer progress) {
        BarPath free = best(metre -> BarPointer.search(heard, metre), progress);
        if (free.beats().isEmpty()) {
            return free;
        }
        HeldLevel level = HeldLevel.of(free);
        HeldLevel.TempoSearch paths =
                (slowest, fastest) -> best(metre -> BarPointer.search(heard, metre, slowest, fastest), done -> {});
        Keeping keeping = level.keepingOf(free);
        BarPath held = keeping == Keeping.KEPT ? free : level.middle(paths);
        return keeping == Keeping.WANDERS && !HeldLevel.isNearlyAsGood(held, free)
                ? free
                : level.likeliest(new LevelOdds(heard, loudness), held, paths);
    }

    private static BarPath best(IntFunction<BarPath> search, DoubleConsumer progress) {
        BarPath best = new BarPath(METRES.get(0), Double.NEGATIVE_INFINITY, List.of());
        for (int i = 0; i < METRES.size(); i++) {
            BarPath path = search.apply(METRES.get(i));
            if (path.logScore() > best.logScore()) {
                best = path;
            }
            progress.accept(NETWORK_SHARE + (1 - NETWORK_SHARE) * (i + 1) / METRES.size());
        }
        return best;
    }
}
