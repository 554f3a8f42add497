package cuelead.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names that the parts of a phrased dance have in a sheet ("Verse", "Chorus", "A"), and the letters for them. */
final class PartNames {
    private static final List<String> KNOWN = List.of(
            "verse",
            "chorus",
            "refrain",
            "pre-chorus",
            "prechorus",
            "hook",
            "instrumental",
            "break",
            "middle eight",
            "middle 8",
            "tag",
            "bridge",
            "intro",
            "introduction",
            "outro",
            "interlude",
            "rap",
            "solo",
            "slow part",
            "fast part",
            "a",
            "b",
            "c",
            "d",
            "e",
            "f",
            "one",
            "two",
            "three");
    private static final List<String> TAGS = List.of("tag", "bridge", "tags");
    private static final Pattern HEADING = Pattern.compile(
            "^[\\W_]*(?:(?:the|part|section)\\s+)?(.{1,14}?)(?:\\s+(?:part|section))?[\\W_]*"
                    + "(?:[-:=(\\[]?\\s*\\d{1,3}\\s*(?:counts?|cts?\\.?|beats?)?[\\W_]*)?$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ORDER = Pattern.compile(
            "^\\W*(?:(?:the|running|dance|dancing|part|song) )*(?:order|sequence|phrasing|structure|pattern|running order)"
                    + "(?: of (?:the )?(?:dance|parts|song))?(?: is)?\\s*[:=-]\\s*",
            Pattern.CASE_INSENSITIVE);
    private static final String LETTERS = "ABCDEF";

    private final Map<String, String> letters = new LinkedHashMap<>();

    private PartNames() {}

    /** Empty where the sheet does not name the parts in a way of its own. */
    static PartNames of(List<SheetLine> lines) {
        PartNames names = new PartNames();
        List<String> told = told(lines);
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            heading(lines, i)
                    .filter(name -> told.contains(name) || (KNOWN.contains(name) && isToldShort(name, told)))
                    .filter(name -> !headings.contains(name))
                    .ifPresent(headings::add);
        }
        long parts = headings.stream().filter(name -> !isTag(name)).count();
        boolean many = parts >= 2 || (parts == 1 && headings.stream().anyMatch(told::contains));
        if (many && !told.isEmpty()) {
            names.letter(headings);
        }
        return names;
    }

    /** "V, C, V" tells of a verse; of an intro it does not, whose line then tells when to start. */
    private static boolean isToldShort(String name, List<String> told) {
        return told.stream().anyMatch(item -> item.startsWith(name.substring(0, 1)));
    }

    private void letter(List<String> headings) {
        boolean lettered = headings.stream().filter(name -> !isTag(name)).allMatch(name -> name.length() == 1);
        int next = 0;
        for (String name : headings) {
            boolean full = next >= LETTERS.length();
            if (!isTag(name) && !full) {
                letters.put(name, lettered ? name.toUpperCase(Locale.ROOT) : LETTERS.substring(next, next + 1));
                next++;
            }
        }
    }

    boolean isEmpty() {
        return letters.isEmpty();
    }

    Map<String, String> letters() {
        return letters;
    }

    /** By their first letters too, where these differ: V1 for the first section of the verse. */
    Map<String, String> withInitials() {
        Map<String, String> all = new HashMap<>(letters);
        for (Map.Entry<String, String> entry : letters.entrySet()) {
            String initial = entry.getKey().substring(0, 1);
            long same = letters.keySet().stream()
                    .filter(name -> name.startsWith(initial))
                    .count();
            if (same == 1) {
                all.putIfAbsent(initial, entry.getValue());
            }
        }
        return all;
    }

    static boolean isTag(String name) {
        return TAGS.contains(name);
    }

    /** Where the names begin in a line that tells the order of the parts. */
    static Optional<Integer> order(SheetLine line) {
        Matcher order = ORDER.matcher(line.text());
        return order.find() ? Optional.of(order.end()) : Optional.empty();
    }

    /** The one name that a line consists of, in small letters, where steps or a section stand below it. */
    static Optional<String> heading(List<SheetLine> lines, int index) {
        return heading(lines.get(index))
                .filter(name -> lines.stream()
                        .skip(index + 1)
                        .filter(line -> !line.isBlank())
                        .findFirst()
                        .filter(PartNames::isDanced)
                        .isPresent());
    }

    private static boolean isDanced(SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean numbered = line.text().matches("^\\W*[A-Za-z]{1,8}[ .-]?\\d.*");
        return kind == LineKind.SECTION
                || kind == LineKind.COUNTS
                || (kind == LineKind.OTHER && (numbered || line.isDanced()));
    }

    private static Optional<String> heading(SheetLine line) {
        Matcher heading = HEADING.matcher(line.text());
        return line.text().length() < 60 && heading.matches() && order(line).isEmpty()
                ? Optional.of(heading.group(1).strip().toLowerCase(Locale.ROOT))
                : Optional.empty();
    }

    private static List<String> told(List<SheetLine> lines) {
        for (SheetLine line : lines) {
            Optional<Integer> from = order(line);
            if (from.isPresent()) {
                List<String> told = items(line.text().substring(from.get()));
                if (told.size() >= 3) {
                    return told;
                }
            } else if (SequenceReader.isSequence(line)) {
                return items(line.text());
            }
        }
        return List.of();
    }

    /** "Verse, Chorus, Tag", "verse - chorus", "A A B", "2 x Verse then Chorus (twice)". */
    private static List<String> items(String order) {
        List<String> items = new ArrayList<>();
        String small = order.toLowerCase(Locale.ROOT).replaceAll("\\(.*?\\)", " ");
        for (String item : small.split("[,;/>.]|\\s-\\s|\\bthen\\b|\\band\\b|&|\\+")) {
            String name = item.replaceAll("\\b\\d+\\s*x\\b|\\bx\\s*\\d+\\b|[*\\-#'\"\u2020]", " ")
                    .strip();
            if (KNOWN.contains(name) || name.indexOf(' ') < 0) {
                items.add(name);
            } else {
                items.addAll(List.of(name.split("\\s+")));
            }
        }
        items.removeIf(String::isEmpty);
        return items;
    }
}
