package cuelead.dsp.beat;

import cuelead.dsp.beat.Marks.Mark;
import cuelead.dsp.beat.OddsTerm.View;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;

/**
 * What a beat's marks weigh, and what breaking the count costs or beginning amid it, as {@code odds.txt} beside this class says; its lines are
 *
 * <pre>
 * bar    MARK VIEW WEIGHT     bar    CONSTANT - WEIGHT
 * phrase MARK VIEW WEIGHT     phrase CONSTANT - WEIGHT
 * cost   BREAK - COST
 * start  START - COST
 * metre  BEATS - GAIN
 * </pre>
 *
 * Lines that begin with {@code #} are comments.
 *
 * @param costs  logarithms
 * @param starts logarithms, over a song that begins with a phrase
 * @param metres by beats to the bar (2, 3 and 4): what each beat adds for such bars
 */
record OddsTable(
        double barConstant,
        List<OddsTerm> bar,
        double phraseConstant,
        List<OddsTerm> phrase,
        Map<Break, Double> costs,
        Map<Start, Double> starts,
        Map<Integer, Double> metres) {
    /** Where a phrase may end early. */
    enum Break {
        AFTER_A_BAR,
        AFTER_HALF_A_BAR,
        ELSEWHERE
    }

    /** Where in the count a song may begin but with a phrase. */
    enum Start {
        /** With the last beats of a bar, before the first phrase. */
        PICKUP,
        ELSEWHERE
    }

    OddsTable {
        bar = List.copyOf(bar);
        phrase = List.copyOf(phrase);
        costs = Map.copyOf(costs);
        starts = Map.copyOf(starts);
        metres = Map.copyOf(metres);
    }

    /** The table that the program brings with it. */
    static OddsTable load() {
        try (InputStream in = OddsTable.class.getResourceAsStream("odds.txt")) {
            if (in == null) {
                throw new IllegalStateException("odds.txt is missing");
            }
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static OddsTable read(String text) {
        Map<String, Double> constants = new HashMap<>();
        Map<String, List<OddsTerm>> terms = Map.of("bar", new ArrayList<>(), "phrase", new ArrayList<>());
        Map<Break, Double> costs = new EnumMap<>(Break.class);
        Map<Start, Double> starts = new EnumMap<>(Start.class);
        Map<Integer, Double> metres = new HashMap<>();
        for (String line : text.lines().filter(l -> !l.startsWith("#")).toList()) {
            String[] words = line.split(" +");
            double number = Double.parseDouble(words[3]);
            if (words[0].equals("metre")) {
                metres.put(Integer.parseInt(words[1]), number);
            } else if (words[0].equals("cost")) {
                costs.put(Break.valueOf(words[1]), number);
            } else if (words[0].equals("start")) {
                starts.put(Start.valueOf(words[1]), number);
            } else if (words[1].equals("CONSTANT")) {
                constants.put(words[0], number);
            } else {
                terms.get(words[0]).add(new OddsTerm(Mark.valueOf(words[1]), View.valueOf(words[2]), number));
            }
        }
        boolean isWhole = costs.size() == Break.values().length
                && starts.size() == Start.values().length
                && constants.size() == 2
                && metres.size() == 3;
        if (!isWhole) {
            throw new NoSuchElementException("odds.txt lacks a cost, a start, a constant or a metre");
        }
        return new OddsTable(
                constants.get("bar"),
                terms.get("bar"),
                constants.get("phrase"),
                terms.get("phrase"),
                costs,
                starts,
                metres);
    }
}
