package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.List;
import java.util.stream.IntStream;

/** Rows of beats as a search finds them. */
final class PathBeats {
    private PathBeats() {}

    static List<PathBeat> even(double beatSeconds, int count, double support) {
        return IntStream.range(0, count)
                .mapToObj(i -> new PathBeat(i * beatSeconds, i % 4 + 1, beatSeconds, (float) support))
                .toList();
    }
}
