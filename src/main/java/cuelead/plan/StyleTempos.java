package cuelead.plan;

import cuelead.dance.Dance;
import cuelead.dance.FigureRun;
import cuelead.dance.Metre;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Published tempo ranges of dance styles, from {@code tempos.tsv}, which names the sources. */
public final class StyleTempos {
    private static final List<Range> RANGES = read();

    private StyleTempos() {}

    /** A published range in beats a minute, and the short name of its source. */
    public record Range(String style, int lowBpm, int highBpm, String source) {
        public boolean holds(double bpm) {
            return bpm >= lowBpm && bpm <= highBpm;
        }
    }

    /** The ranges of a style; empty where none is published. */
    public static List<Range> of(String style) {
        return RANGES.stream().filter(range -> range.style().equals(style)).toList();
    }

    /** The style that a dance tells by its metre, its title or its figures; empty where it tells none. */
    public static Optional<String> styleOf(Dance dance) {
        if (dance.header().metre() == Metre.SIXES) {
            return Optional.of("waltz");
        }
        String title = dance.header().title().toLowerCase(Locale.ROOT).replace('-', ' ');
        Optional<String> named = RANGES.stream()
                .map(Range::style)
                .filter(style -> (" " + title + " ").contains(" " + style.replace('-', ' ') + " "))
                .findFirst();
        return named.or(() -> byFigures(dance));
    }

    private static Optional<String> byFigures(Dance dance) {
        if (count(dance, "nightclub") > 1) {
            return Optional.of("nightclub");
        }
        return count(dance, "samba") + count(dance, "botafogo") > 1 ? Optional.of("samba") : Optional.empty();
    }

    private static long count(Dance dance, String figure) {
        return dance.parts().stream()
                .flatMap(part -> part.sections().stream())
                .flatMap(section -> section.figures().stream())
                .map(FigureRun::figure)
                .filter(found -> found.id().startsWith(figure))
                .count();
    }

    private static List<Range> read() {
        try (InputStream in = StyleTempos.class.getResourceAsStream("tempos.tsv")) {
            if (in == null) {
                throw new IllegalStateException("tempos.tsv is missing from the program");
            }
            List<Range> ranges = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                String[] cells = line.split("\t", -1);
                if (cells.length == 4 && !cells[0].equals("style")) {
                    ranges.add(new Range(cells[0], Integer.parseInt(cells[1]), Integer.parseInt(cells[2]), cells[3]));
                }
            }
            return List.copyOf(ranges);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("tempos.tsv cannot be read", unreadable);
        }
    }
}
