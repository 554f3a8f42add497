package cuelead.song;

import cuelead.dsp.beat.Rhythm.HeardBeat;
import cuelead.song.Hearing.Stretch;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the beats that were heard have little support over several beats, so that a user should listen there.
 * Much support is no promise: a search can be sure and half a beat off.
 */
final class UnsureStretches {
    private static final int WINDOW_BEATS = 8;
    /** Means over eight beats: in noise about 3, in music with a clear beat 8 and more. */
    private static final double LEAST_SUPPORT = 6;

    private UnsureStretches() {}

    static List<Stretch> of(List<HeardBeat> beats) {
        List<Stretch> stretches = new ArrayList<>();
        int window = Math.min(WINDOW_BEATS, beats.size());
        double sum = 0;
        for (int i = 0; i < beats.size(); i++) {
            sum += beats.get(i).support() - (i >= window ? beats.get(i - window).support() : 0);
            if (i >= window - 1 && sum < LEAST_SUPPORT * window) {
                add(stretches, beats.get(i - window + 1).seconds(), beats.get(i).seconds());
            }
        }
        return stretches;
    }

    private static void add(List<Stretch> stretches, double from, double to) {
        int last = stretches.size() - 1;
        if (last >= 0 && from <= stretches.get(last).toSeconds()) {
            stretches.set(last, new Stretch(stretches.get(last).fromSeconds(), to));
        } else {
            stretches.add(new Stretch(from, to));
        }
    }
}
