package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A phrased dance whose parts have names of their own, or letters with no word "part" beside them: "VERSE" becomes
 * "Part A", "V1 [1-8]" becomes "A1 [1-8]", and the order of the parts is told in letters.
 */
final class NamedParts implements Manner {
    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        PartNames names = PartNames.of(lines);
        if (names.isEmpty()) {
            return lines;
        }
        Pattern numbered = numbered(names);
        List<SheetLine> usual = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            SheetLine line = lines.get(i);
            Optional<Integer> order = PartNames.order(line);
            Optional<String> letter = PartNames.heading(lines, i).map(names.letters()::get);
            if (order.isPresent()) {
                usual.add(lettered(line, order.get(), names).with(0, order.get(), "Sequence: "));
            } else if (SequenceReader.isSequence(line) || isTable(line, names)) {
                usual.add(lettered(line, 0, names));
            } else if (letter.isPresent()) {
                usual.add(line.with(0, line.text().length(), "Part " + letter.get()));
            } else {
                usual.add(section(line, numbered, names));
            }
        }
        return usual;
    }

    /** "V1", "Verse 1", "A.1", "A-1" at the head of a line. */
    private static Pattern numbered(PartNames names) {
        return Pattern.compile(
                "^[\\s~*#=_-]*(?:part |section )?(" + alternatives(names.withInitials())
                        + ")[ .-]?(\\d{1,2})(?=\\s*[\\[(:.]|\\s-|\\s+[A-Z])",
                Pattern.CASE_INSENSITIVE);
    }

    private static String alternatives(Map<String, String> names) {
        List<String> longest = new ArrayList<>(names.keySet());
        longest.sort((a, b) -> b.length() - a.length());
        return String.join("|", longest.stream().map(Pattern::quote).toList());
    }

    private static SheetLine section(SheetLine line, Pattern numbered, PartNames names) {
        Matcher head = numbered.matcher(line.text());
        if (!head.find()) {
            return line;
        }
        String name = head.group(1).toLowerCase(Locale.ROOT);
        return line.with(0, head.end(), names.withInitials().get(name) + head.group(2));
    }

    /** "Verse 32, Chorus 16": names with their lengths. */
    private static boolean isTable(SheetLine line, PartNames names) {
        Matcher length = Pattern.compile(
                        "\\b(?:" + alternatives(names.letters()) + ")\\b\\s*[=:(-]?\\s*\\d{1,3}\\b",
                        Pattern.CASE_INSENSITIVE)
                .matcher(line.text());
        return length.results().count() >= 2;
    }

    private static SheetLine lettered(SheetLine line, int from, PartNames names) {
        Pattern name = Pattern.compile("\\b(?:" + alternatives(names.letters()) + ")\\b", Pattern.CASE_INSENSITIVE);
        SheetLine lettered = line;
        Matcher next = name.matcher(line.text());
        int at = from;
        while (next.find(at)) {
            String letter = names.letters().get(next.group().toLowerCase(Locale.ROOT));
            lettered = lettered.with(next.start(), next.end(), letter);
            at = next.start() + letter.length();
            next = name.matcher(lettered.text());
        }
        return lettered;
    }
}
