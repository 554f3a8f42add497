package cuelead.dance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The figures of the trade, from {@code figures.tsv}, whose sources (published glossaries of clubs and
 * associations) stand at its top and in each row.
 */
public final class Figures {
    private static final Figures STANDARD = read("figures.tsv", resource());

    private final List<FigureRow> rows;
    private final Map<String, FigureRow> byId = new HashMap<>();
    private final Map<String, Figure> byName = new HashMap<>();
    private final Map<String, String> singleWords = new HashMap<>();

    private Figures(List<FigureRow> rows) {
        this.rows = List.copyOf(rows);
        for (FigureRow row : rows) {
            Figure figure = row.figure();
            byId.putIfAbsent(figure.id(), row);
            byName.putIfAbsent(key(figure.name()), figure);
            if (row.kind() == FigureRow.Kind.ACTION && !figure.pattern().isEmpty()) {
                Figure.Beat beat = figure.pattern().get(0);
                singleWords.putIfAbsent(
                        beat.action() + ":" + beat.direction(),
                        figure.callWords().get(0));
                singleWords.putIfAbsent(
                        beat.action().toString(), figure.callWords().get(0));
            }
        }
        for (FigureRow row : rows) {
            row.figure().synonyms().forEach(name -> byName.putIfAbsent(key(name), row.figure()));
        }
    }

    /** The table that comes with the program. */
    public static Figures standard() {
        return STANDARD;
    }

    /**
     * Reads a table.
     *
     * @throws IllegalStateException naming line and column, when a row is broken
     */
    public static Figures read(String name, String text) {
        return new Figures(FigureTable.read(name, text));
    }

    /** These and others, which come first. */
    public Figures with(List<FigureRow> others) {
        List<FigureRow> all = new ArrayList<>(others);
        all.addAll(rows);
        return new Figures(all);
    }

    /** In the order of the table. */
    public List<FigureRow> rows() {
        return rows;
    }

    /** The row of a figure by the figure's key. */
    public Optional<FigureRow> row(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** A figure by its name, a synonym or an abbreviation, whatever the case and the hyphens. */
    public Optional<Figure> named(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    /** One short word for an action that stands alone: "cross", "behind", "touch". */
    public String callWord(Action action, Direction direction) {
        String exact = singleWords.get(action + ":" + plain(direction));
        if (exact != null) {
            return exact;
        }
        return singleWords.getOrDefault(action.toString(), action.word().replace('-', ' '));
    }

    private static Direction plain(Direction direction) {
        return switch (direction) {
            case FWD_DIAG, FWD_CENTRE, FWD_ACROSS -> Direction.FWD;
            case BACK_DIAG, BACK_CENTRE -> Direction.BACK;
            default -> direction;
        };
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-,\\s]+", " ").strip();
    }

    private static String resource() {
        try (InputStream in = Figures.class.getResourceAsStream("figures.tsv")) {
            if (in == null) {
                throw new IllegalStateException("figures.tsv is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("figures.tsv cannot be read", unreadable);
        }
    }
}
