package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sheet in a letter: "Dear all, ... I have called it Thursday Thaw." Its title is what the dance is called. */
final class LetterTitle {
    private static final Pattern LETTER = Pattern.compile(
            "^\\W*(?:subject|from|to|sent|date|cc|re|fwd?|dear|hi|hello|hey|hiya|greetings|good (?:morning|evening|afternoon)|howdy"
                    + "|ok|okay|right|so|well|as promised|here'?s|here is|this|the (?:new )?(?:dance|one)|our|my|thanks|hope)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern CALLED = Pattern.compile(
            "\\b(?i:(?:is|it's|its|i've|i have|we've|we have|was)?\\s*(?:called|named|titled|entitled|christened)(?: it| this(?: one)?)?"
                    + "|(?:title|name)(?: of (?:the|this) dance)? is|(?:dance|title|name)\\s*[:=])\\s*"
                    + "(?:[\"\u201c\u201d\u00ab']\\s*([^\"\u201c\u201d\u00bb']{2,50})[\"\u201c\u201d\u00bb']|((?:[A-Z0-9][\\w'\u2019-]*)(?:\\s+(?:(?:the|of|a|an|and|in|on|to|at|for|with)\\s+){0,2}[A-Z0-9][\\w'\u2019-]*){0,6}))");
    /** "LITTLE LANTERN, 32 counts": a name before the facts. */
    private static final Pattern BEFORE_FACTS = Pattern.compile(
            "^\\W*(\\p{Lu}[^.!?,:(]{2,40}?)()\\s*[-,:(/|]\\s*\\d{1,3}[- ]?(?:counts?|cts?|c|walls?)\\b");
    /** Lines of the sheet in which it is looked for. */
    private static final int NEAR = 12;

    private LetterTitle() {}

    /** The same lines; in a letter what the dance is called stands above them. */
    static List<SheetLine> first(List<SheetLine> lines) {
        Optional<SheetLine> top = lines.stream().filter(line -> !line.isBlank()).findFirst();
        if (top.isEmpty() || !LETTER.matcher(top.get().text()).find()) {
            return lines;
        }
        return first(lines, CALLED)
                .or(() -> first(lines, BEFORE_FACTS))
                .map(title -> above(title, lines))
                .orElse(lines);
    }

    private static Optional<SheetLine> first(List<SheetLine> lines, Pattern name) {
        return lines.stream()
                .limit(NEAR)
                .flatMap(line -> title(line, name).stream())
                .findFirst();
    }

    private static Optional<SheetLine> title(SheetLine line, Pattern name) {
        Matcher called = name.matcher(line.text());
        if (!called.find()) {
            return Optional.empty();
        }
        int group = called.group(1) != null ? 1 : 2;
        return Optional.of(line.part(called.start(group), called.end(group)));
    }

    private static List<SheetLine> above(SheetLine title, List<SheetLine> lines) {
        List<SheetLine> all = new ArrayList<>(List.of(title));
        all.addAll(lines);
        return all;
    }
}
