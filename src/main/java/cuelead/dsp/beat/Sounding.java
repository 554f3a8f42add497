package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.List;

/** Takes away beats at either end that lie in silence: the search goes on to the file's end, the music may not. */
final class Sounding {
    /** Softer than this part of the song's mean is silence to a dancer. */
    private static final double SILENT = 0.03;
    /** A beat sounds when something does from a little before it until this long after it. */
    private static final double BEFORE_SECONDS = 0.05;

    private static final double AFTER_SECONDS = 0.2;

    private Sounding() {}

    static List<PathBeat> only(List<PathBeat> beats, BandSpectrum song) {
        double threshold = SILENT * song.mean();
        int first = 0;
        int end = beats.size();
        while (first < end && level(beats.get(first), song) < threshold) {
            first++;
        }
        while (end > first && level(beats.get(end - 1), song) < threshold) {
            end--;
        }
        return beats.subList(first, end);
    }

    private static double level(PathBeat beat, BandSpectrum song) {
        int from = (int) Math.max(0, (beat.seconds() - BEFORE_SECONDS) * BandSpectrum.FRAMES_PER_SECOND);
        int to = (int) Math.min(song.frames(), (beat.seconds() + AFTER_SECONDS) * BandSpectrum.FRAMES_PER_SECOND + 1);
        double sum = 0;
        for (int band = 0; band < song.bands(); band++) {
            for (int t = from; t < to; t++) {
                sum += song.band(band)[t];
            }
        }
        return sum / (Math.max(1, to - from) * (double) song.bands());
    }
}
