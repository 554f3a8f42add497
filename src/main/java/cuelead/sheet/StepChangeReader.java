package cuelead.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds steps that are danced in the place of others, in whatever words a line tells of them. */
final class StepChangeReader {
    private static final Set<String> CHANGES = Set.of(
            "replace",
            "replacing",
            "replaces",
            "change",
            "changing",
            "changes",
            "chg",
            "alter",
            "substitute",
            "substituting",
            "instead",
            "modify",
            "modifying",
            "mod",
            "swap",
            "swapping");
    private static final Set<String> WALLS = Set.of("wall", "walls");
    private static final Set<String> ENDS = Set.of("then", "restart", "begin", "start", "again", "facing");

    private StepChangeReader() {}

    /** "For count 24 touch R next to L instead of the step", "on counts 7-8 do a stomp, hold instead". */
    private static final Pattern INSTEAD = Pattern.compile(
            "\\b(?:for|on|at|dance)\\s+(?:counts?|beats?|cts?)\\s+(\\d[\\d& ,-]*?)\\s*[:,]?\\s+(?=\\p{L})(?:do |dance )?(.+?),?\\s+instead\\b",
            Pattern.CASE_INSENSITIVE);

    /** Empty where none are told. */
    static Optional<StepChange> read(SheetLine line) {
        Matcher instead = INSTEAD.matcher(line.text());
        while (instead.find()) {
            Optional<CountGroup> group = CountGroup.read(instead.group(1));
            String prose = instead.group(2);
            if (group.isPresent() && DanceLine.isDanced(prose) && line.fit().fits(instead.group(1) + " " + prose)) {
                return Optional.of(StepChange.of(group.get().counts(), prose));
            }
        }
        List<Token> tokens = line.tokens();
        Matcher becomes = BECOMES.matcher(line.text());
        if (becomes.find()) {
            return CountGroup.read(becomes.group(1))
                    .map(group -> StepChange.of(group.counts(), prose(line, becomes.end())));
        }
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).is(Token.Kind.WORD)
                    && CHANGES.contains(tokens.get(i).text())) {
                return read(line, tokens.subList(i + 1, tokens.size()));
            }
        }
        return Optional.empty();
    }

    private static Optional<StepChange> read(SheetLine line, List<Token> tokens) {
        Optional<CountGroup> group = Optional.empty();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean wall = i > 0 && WALLS.contains(tokens.get(i - 1).text());
            boolean number = !wall && (token.is(Token.Kind.NUMBER) || token.is(Token.Kind.AMPERSAND));
            if (group.isEmpty() && number) {
                group = CountGroup.read(line.text(), token.column() - 1);
            } else if (group.isPresent()
                    && leadsToSteps(token, line.text().substring(group.get().end()))) {
                return Optional.of(StepChange.of(
                        group.get().counts(),
                        prose(line, token.column() - 1 + token.text().length())));
            }
        }
        return Optional.empty();
    }

    private static boolean leadsToSteps(Token token, String behindCounts) {
        boolean word = token.is(Token.Kind.WORD)
                && Set.of("with", "to", "by", "for", "into", "do", "dance").contains(token.text());
        return word || (token.text().equals(":") && behindCounts.strip().startsWith(":"));
    }

    /** "Counts 15-16 become stomp R, stomp L" */
    private static final Pattern BECOMES = Pattern.compile(
            "\\b(?:counts?|beats?|cts?)\\s+(\\d[\\d& ,-]*?)\\s+(?:becomes?|are now|is now)\\s+",
            Pattern.CASE_INSENSITIVE);

    /** "Step change: on count 16 touch L beside R", "change on wall 3: 15-16 rock R back, recover L" */
    static Optional<StepChange> counted(SheetLine line) {
        List<Token> tokens = line.tokens();
        boolean changes = false;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            changes |= token.is(Token.Kind.WORD) && CHANGES.contains(token.text());
            boolean place = i > 0 && (WALLS.contains(tokens.get(i - 1).text()) || isUpTo(tokens, i - 1));
            Optional<CountGroup> group = changes && token.is(Token.Kind.NUMBER) && !place
                    ? CountGroup.read(line.text(), token.column() - 1)
                    : Optional.empty();
            Optional<StepChange> change = group.map(found -> StepChange.of(found.counts(), prose(line, found.end())))
                    .filter(found -> DanceLine.isDanced(found.prose()) && found.fits());
            if (change.isPresent()) {
                return change;
            }
        }
        return Optional.empty();
    }

    /** "After count 14", "to count 14", "the first 14" */
    private static boolean isUpTo(List<Token> tokens, int at) {
        Token token = tokens.get(at);
        boolean count = token.is(Token.Kind.WORD) && token.text().startsWith("count");
        Token before = count && at > 0 ? tokens.get(at - 1) : token;
        return Set.of("after", "to", "until", "till", "through", "first", "dance")
                .contains(before.text());
    }

    /** The words from a 0-based index on, up to where they tell of something else. */
    private static String prose(SheetLine line, int from) {
        int end = line.tokens().stream()
                .filter(token -> token.column() > from)
                .filter(token -> token.is(Token.Kind.WORD) && ENDS.contains(token.text()))
                .findFirst()
                .map(token -> token.column() - 1)
                .orElse(line.text().length());
        return line.text().substring(from, end);
    }
}
