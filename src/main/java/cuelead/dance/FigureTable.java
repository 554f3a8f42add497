package cuelead.dance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the figure table: tab-separated, one row a figure, comment lines begin with {@code #}, the first other
 * line names the columns. Strict: the table is part of the program, so a broken row throws with its line and column.
 */
final class FigureTable {
    private static final Set<String> STATUSES = Set.of("agreed", "single", "cp", "differs", "differs-cp", "weak");

    private final String name;
    private List<String> columns = List.of();
    private int line;
    private String[] cells = {};

    private FigureTable(String name) {
        this.name = name;
    }

    static List<FigureRow> read(String name, String text) {
        return new FigureTable(name).rows(text);
    }

    private List<FigureRow> rows(String text) {
        List<FigureRow> rows = new ArrayList<>();
        for (String row : text.split("\n", -1)) {
            line++;
            if (row.isBlank() || row.startsWith("#")) {
                continue;
            }
            cells = row.split("\t", -1);
            if (columns.isEmpty()) {
                columns = List.of(cells);
            } else {
                rows.add(row());
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(name + ": no rows");
        }
        return rows;
    }

    private FigureRow row() {
        if (cells.length != columns.size()) {
            throw new IllegalStateException(
                    name + ":" + line + ": " + cells.length + " columns, expected " + columns.size());
        }
        Figure figure = figure();
        String variants = cell("variants");
        Turn sum = figure.pattern().stream().map(Figure.Beat::turn).reduce(Turn.NONE, Turn::plus);
        if (sum.degrees() != number("net_turn", cell("net_turn"))) {
            throw broken("net_turn", "turns add up to " + sum.degrees());
        }
        if (!STATUSES.contains(cell("status"))) {
            throw broken("status", "unknown status");
        }
        return new FigureRow(
                figure,
                kind(),
                cell("travel"),
                sum,
                variants.contains("4th") || variants.contains("last "),
                variants.contains("turn on") || variants.contains("turn spread"),
                cell("sources"),
                cell("status"));
    }

    private Figure figure() {
        List<String> words = list("call_words", '|');
        List<Figure.Beat> pattern = pattern();
        if (words.size() != pattern.size()) {
            throw broken("call_words", words.size() + " words for " + pattern.size() + " actions");
        }
        List<String> synonyms = new ArrayList<>(list("synonyms", ';'));
        synonyms.addAll(list("abbrevs", ';'));
        Foot lead = cell("lead").equals("L") ? Foot.LEFT : Foot.RIGHT;
        return new Figure(cell("id"), cell("name"), synonyms, lead, pattern, cell("call_head"), words);
    }

    private List<Figure.Beat> pattern() {
        List<String> actions = list("actions", '|');
        List<String> offsets = sameLength("offsets", actions);
        List<String> turns = sameLength("turns", actions);
        List<String> transfers = sameLength("transfer", actions);
        List<Figure.Beat> pattern = new ArrayList<>();
        for (int i = 0; i < actions.size(); i++) {
            String[] parts = actions.get(i).split(":", -1);
            if (parts.length != 3) {
                throw broken("actions", "expected foot:action:direction, found " + actions.get(i));
            }
            pattern.add(new Figure.Beat(
                    offset(offsets.get(i)),
                    foot(parts[0]),
                    Action.named(parts[1]).orElseThrow(() -> broken("actions", "unknown action " + parts[1])),
                    Direction.named(parts[2]).orElseThrow(() -> broken("actions", "unknown direction " + parts[2])),
                    turn(turns.get(i)),
                    transfer(transfers.get(i))));
        }
        return pattern;
    }

    private List<String> sameLength(String column, List<String> actions) {
        List<String> values = list(column, '|');
        if (values.size() != actions.size()) {
            throw broken(column, values.size() + " values for " + actions.size() + " actions");
        }
        return values;
    }

    private Optional<Foot> foot(String letter) {
        return switch (letter) {
            case "R" -> Optional.of(Foot.RIGHT);
            case "L" -> Optional.of(Foot.LEFT);
            case "B", "-" -> Optional.empty();
            default -> throw broken("actions", "unknown foot " + letter);
        };
    }

    private Transfer transfer(String letter) {
        for (Transfer transfer : Transfer.values()) {
            if (transfer.letter().equals(letter)) {
                return transfer;
            }
        }
        throw broken("transfer", "unknown transfer " + letter);
    }

    private Turn turn(String degrees) {
        int value = number("turns", degrees);
        if (value % 45 != 0) {
            throw broken("turns", "not a multiple of 45: " + degrees);
        }
        return new Turn(value);
    }

    private Counts offset(String counts) {
        try {
            return new Counts(Math.round(Double.parseDouble(counts) * Counts.TICKS_PER_COUNT));
        } catch (NumberFormatException notNumber) {
            throw broken("offsets", "not a number: " + counts);
        }
    }

    private int number(String column, String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notNumber) {
            throw broken(column, "not a whole number: " + text);
        }
    }

    private FigureRow.Kind kind() {
        try {
            return FigureRow.Kind.valueOf(cell("kind").toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException unknown) {
            throw broken("kind", "unknown kind " + cell("kind"));
        }
    }

    private List<String> list(String column, char separator) {
        String cell = cell(column);
        if (cell.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(cell.split(separator == '|' ? "\\|" : ";", -1))
                .map(String::strip)
                .toList();
    }

    private String cell(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalStateException(name + ": no column " + column);
        }
        return cells[index].strip();
    }

    private IllegalStateException broken(String column, String what) {
        return new IllegalStateException(name + ":" + line + ": column " + column + ": " + what);
    }
}
