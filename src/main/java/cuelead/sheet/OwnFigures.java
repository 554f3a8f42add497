package cuelead.sheet;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures and local names of an instructor's own, one a line: {@code ramble = step R to side, step L behind R, step R
 * to side, scuff L} or {@code wizard step = dorothy}. The words stand for the foot that they begin with; for the other
 * foot they are danced as the mirror image. {@code #} begins a comment.
 */
public final class OwnFigures {
    /** No figures of one's own. */
    public static final OwnFigures NONE = new OwnFigures(List.of(), List.of());

    private static final Set<String> LEFT = Set.of("l", "lf", "left");
    private static final Set<String> RIGHT = Set.of("r", "rf", "right");
    private static final Pattern FOOT = Pattern.compile("\\b(R|L|RF|LF|right|left)\\b", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST_LINE = 2000;

    private final List<Own> figures;
    private final List<Problem> problems;

    private OwnFigures(List<Own> figures, List<Problem> problems) {
        this.figures = figures.stream()
                .sorted(Comparator.comparingInt((Own own) -> own.name().length())
                        .reversed())
                .toList();
        this.problems = List.copyOf(problems);
    }

    private record Own(String name, String words, Pattern pattern) {}

    /**
     * Reads a file of own figures, UTF-8.
     *
     * @throws Refused when it cannot be read
     */
    public static OwnFigures read(Path file) throws Refused {
        try {
            return of(file.toString(), Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new Refused("The figures of your own in " + file + " cannot be read; check the file.", unreadable);
        }
    }

    /**
     * Reads the file of own figures that a user named, if any.
     *
     * @throws Refused when it cannot be read
     */
    public static OwnFigures read(Optional<Path> file) throws Refused {
        return file.isPresent() ? read(file.get()) : NONE;
    }

    /** Reads their text; lines that are none become problems. */
    public static OwnFigures of(String fileName, String text) {
        List<Own> figures = new ArrayList<>();
        Problems problems = new Problems(fileName);
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            String plain = line.strip();
            int equals = plain.indexOf('=');
            boolean whole = equals > 0 && equals < plain.length() - 1 && plain.length() <= LONGEST_LINE;
            if (whole && !plain.startsWith("#")) {
                String name = plain.substring(0, equals).strip();
                Pattern pattern = Pattern.compile(
                        "(?<![\\p{L}\\d])" + Pattern.quote(name) + "(?![\\p{L}\\d])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
                figures.add(new Own(name, plain.substring(equals + 1).strip(), pattern));
            } else if (!plain.isEmpty() && !plain.startsWith("#")) {
                problems.error(
                        "own_figure",
                        number,
                        1,
                        "This line is no figure of your own.",
                        "Write it like \"ramble = step R to side, step L behind R\".");
            }
        }
        return new OwnFigures(figures, problems.all());
    }

    /** Mistakes in the file. */
    public List<Problem> problems() {
        return problems;
    }

    /** The line with the words of own figures in the place of their names. */
    LaidLine expanded(LaidLine line) {
        Optional<CountGroup> counts = CountGroup.read(line.text());
        if (figures.isEmpty() || counts.isEmpty()) {
            return line;
        }
        LaidLine expanded = line;
        for (Own own : figures) {
            Matcher matcher = own.pattern().matcher(expanded.text());
            if (matcher.find(Math.min(counts.get().end(), expanded.text().length()))) {
                expanded = replaced(expanded, matcher.start(), matcher.end(), own);
            }
        }
        return expanded;
    }

    private static LaidLine replaced(LaidLine line, int start, int end, Own own) {
        String text = line.text();
        int before = wordStart(text, start);
        int after = wordEnd(text, end);
        String ahead = plain(text.substring(before, start));
        String behind = plain(text.substring(end, after));
        boolean footAhead = LEFT.contains(ahead) || RIGHT.contains(ahead);
        boolean footBehind = !footAhead && (LEFT.contains(behind) || RIGHT.contains(behind));
        String foot = footAhead ? ahead : footBehind ? behind : "";
        int from = footAhead ? before : start;
        int to = footBehind ? after : end;
        return line.with(from, to, words(own, foot));
    }

    /** The words for this foot; as they are where none is named. */
    private static String words(Own own, String foot) {
        Matcher first = FOOT.matcher(own.words());
        boolean leadsLeft = first.find() && LEFT.contains(plain(first.group()));
        boolean other = leadsLeft ? RIGHT.contains(foot) : LEFT.contains(foot);
        if (!FOOT.matcher(own.words()).find()) {
            return foot.isEmpty() ? own.words() : foot + " " + own.words();
        }
        return other ? FOOT.matcher(own.words()).replaceAll(found -> swapped(found.group())) : own.words();
    }

    private static String swapped(String foot) {
        return switch (plain(foot)) {
            case "r" -> "L";
            case "l" -> "R";
            case "rf" -> "LF";
            case "lf" -> "RF";
            case "right" -> "left";
            default -> "right";
        };
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    private static int wordStart(String text, int from) {
        int at = from;
        while (at > 0 && text.charAt(at - 1) == ' ') {
            at--;
        }
        while (at > 0 && Character.isLetter(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private static int wordEnd(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        while (at < text.length() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
