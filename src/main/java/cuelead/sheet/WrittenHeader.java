package cuelead.sheet;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The head of a sheet that is written: title, one fact a line, credits, the order of a phrased dance. */
final class WrittenHeader {
    private static final String PHRASED = "Phrased";

    private final List<String> lines = new ArrayList<>();
    private final Dance dance;

    private WrittenHeader(Dance dance) {
        this.dance = dance;
    }

    static List<String> lines(Dance dance, SheetNotes notes) {
        WrittenHeader written = new WrittenHeader(dance);
        written.facts(dance.header());
        written.lines.addAll(notes.credits());
        written.order();
        return written.lines;
    }

    private void facts(Header header) {
        lines.add(header.title().isEmpty() ? "UNTITLED" : header.title());
        header.statedCounts().ifPresent(counts -> lines.add("Count: " + counts));
        header.statedWalls().ifPresent(walls -> lines.add("Wall: " + walls));
        if (!header.level().isEmpty()) {
            lines.add("Level: " + header.level());
        }
        if (header.metre() == Metre.SIXES) {
            lines.add("Waltz");
        }
        header.statedTempo().ifPresent(tempo -> lines.add(Math.round(tempo) + " bpm"));
        if (!header.song().isEmpty()) {
            lines.add("Song: " + header.song());
        }
        header.countOne().ifPresent(this::countOne);
        header.leadBeats().ifPresent(beats -> lines.add("Lead: " + beats));
        if (header.countRate() != CountRate.ONE) {
            lines.add("Counts a beat: " + header.countRate().label());
        }
        if (header.startWeight() == Weight.LEFT || header.startWeight() == Weight.RIGHT) {
            lines.add("Start with weight on " + (header.startWeight() == Weight.LEFT ? "left" : "right"));
        }
    }

    private void countOne(CountOne where) {
        if (where instanceof CountOne.Intro intro) {
            lines.add("Intro: " + intro.counts() + " counts");
        } else if (where instanceof CountOne.AtSeconds at) {
            lines.add(String.format(Locale.ROOT, "Count 1: %.3f", at.songSeconds()));
        }
    }

    private void order() {
        if (!dance.isPhrased()) {
            return;
        }
        String lengths = dance.claims().lengths().stream()
                .map(claim -> "Part " + claim.part() + " " + claim.counts() + " counts")
                .collect(Collectors.joining(", "));
        boolean isTold = dance.header().level().contains(PHRASED);
        if (!lengths.isEmpty() || !isTold) {
            lines.add(lengths.isEmpty() ? PHRASED : PHRASED + ": " + lengths);
        }
        if (!dance.sequence().isEmpty()) {
            lines.add("Sequence: " + sequence());
        }
    }

    /** "A, B, A16": a part that is broken off with the counts that are danced of it. */
    private String sequence() {
        List<String> names = new ArrayList<>();
        int run = 0;
        for (String name : dance.sequence()) {
            boolean isPart = dance.parts().stream().map(Part::name).anyMatch(name::equals);
            run += isPart ? 1 : 0;
            int wall = run;
            String cut = dance.restarts().stream()
                    .filter(restart -> isPart && restart.wall() == wall)
                    .findFirst()
                    .map(restart -> String.valueOf(restart.afterCount()))
                    .orElse("");
            names.add(name + cut);
        }
        dance.ending().filter(ending -> ending.afterCount().isEmpty()).ifPresent(ending -> names.add("Ending"));
        return String.join(", ", names);
    }
}
