package cuelead.steer;

import cuelead.song.Hearing;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a teacher wants to know of a song's beats, in sentences. */
public final class BeatWords {
    private static final int TEMPO_BEATS = 16;
    /** Tempo within this share of its middle is felt as steady; within the second as drifting a little. */
    private static final double STEADY = 0.01;

    private static final double DRIFTING = 0.04;

    private final BeatGrid beats;
    private final Hearing hearing;

    /** Of beats that were heard, read or put right. */
    public BeatWords(Hearing hearing) {
        this.hearing = hearing;
        this.beats = hearing.beats();
    }

    /** One line: tempo, drift and metre. */
    public String inShort() {
        return String.format(Locale.ROOT, "%.1f beats a minute", middleTempo()) + ", " + drift() + ", " + beatsPerBar()
                + " to the bar";
    }

    /** All of it, a sentence each. */
    public List<String> inFull() {
        List<String> sentences = new ArrayList<>();
        sentences.add(inShort() + ".");
        sentences.add("The beats run from " + at(0) + " to " + at(beats.size() - 1) + "; the first bar begins at "
                + at(beats.firstDownbeat()) + ".");
        phrases().ifPresent(sentences::add);
        hearing.entrySeconds().ifPresent(seconds -> sentences.add(entry(seconds)));
        sentences.add(sureness());
        return sentences;
    }

    private String at(int beat) {
        return Told.minutes(beats.beatSeconds(beat));
    }

    private int beatsPerBar() {
        int most = 1;
        for (int i = 0; i < beats.size(); i++) {
            most = Math.max(most, beats.beatInBar(i));
        }
        return most;
    }

    /** Beats a minute, over several beats at a time: what single beats are off by hardly shows. */
    private double middleTempo() {
        int span = Math.min(TEMPO_BEATS, beats.size() - 1);
        double[] tempi = IntStream.range(0, beats.size() - span)
                .mapToDouble(i -> 60 * span / (beats.beatSeconds(i + span) - beats.beatSeconds(i)))
                .sorted()
                .toArray();
        return tempi[tempi.length / 2];
    }

    private String drift() {
        double median = middleTempo();
        double slowest = median;
        double fastest = median;
        for (int i = TEMPO_BEATS; i < beats.size(); i++) {
            double tempo = 60 * TEMPO_BEATS / (beats.beatSeconds(i) - beats.beatSeconds(i - TEMPO_BEATS));
            slowest = Math.min(slowest, tempo);
            fastest = Math.max(fastest, tempo);
        }
        double drift = Math.max(fastest / median - 1, 1 - slowest / median);
        String range = String.format(Locale.ROOT, " (%.0f to %.0f)", slowest, fastest);
        return drift <= STEADY ? "steady" : (drift <= DRIFTING ? "drifting a little" : "drifting") + range;
    }

    private Optional<String> phrases() {
        int counts = 0;
        for (int i = 0; i < beats.size(); i++) {
            counts = Math.max(counts, beats.countInPhrase(i));
        }
        if (counts == 0) {
            return Optional.empty();
        }
        String name = counts == 8 ? "eights" : counts == 6 ? "sixes" : "phrases of " + counts;
        List<String> breaks = new ArrayList<>();
        for (int i = 1; i < beats.size(); i++) {
            int before = beats.countInPhrase(i - 1);
            if (beats.countInPhrase(i) == 1 && before != counts) {
                breaks.add(at(i) + " (after " + Told.number(before, "count") + ")");
            }
        }
        return Optional.of(
                breaks.isEmpty()
                        ? "It keeps its " + name + " from beginning to end."
                        : "It breaks its " + name + " at " + String.join(", ", breaks)
                                + ": there a dance may need a tag or a restart.");
    }

    private String entry(double seconds) {
        int counts = beats.nearestBeat(seconds) - beats.firstDownbeat();
        return "The singer or the band seem to come in at " + Told.minutes(seconds) + ", after an intro of "
                + Told.number(counts, "count") + ": the dance may begin there.";
    }

    private String sureness() {
        if (hearing.unsure().isEmpty()) {
            return "No stretch stands out as doubtful; clicks tell for certain.";
        }
        return "The beat is not clear "
                + hearing.unsure().stream()
                        .map(s -> "from " + Told.minutes(s.fromSeconds()) + " to " + Told.minutes(s.toSeconds()))
                        .collect(Collectors.joining(", "))
                + ": listen to clicks there.";
    }
}
