package cuelead.sheet;

import cuelead.dance.OwnCall;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Reads the sheet's own calls: {@code "side, close, -"} at the end of a count line, one a written action, {@code -}
 * for silence; fewer than actions are for the first ones.
 */
final class OwnCallReader {
    /** Editors turn a hyphen between spaces into a dash. */
    private static final Set<String> SILENCE = Set.of("-", "\u2013", "\u2014");

    private final Problems problems;
    private final int line;

    OwnCallReader(Problems problems, int line) {
        this.problems = problems;
        this.line = line;
    }

    /** Own calls need counts to stand on. */
    static void reportLost(SheetLine line, Problems problems) {
        List<Token> tokens = line.tokens();
        if (tokens.isEmpty()) {
            return;
        }
        Token last = tokens.get(tokens.size() - 1);
        boolean quoted = last.is(Token.Kind.QUOTED) || last.is(Token.Kind.UNCLOSED_QUOTE);
        if (quoted && line.told().isPresent()) {
            problems.note(
                    "calls_without_counts",
                    line.number(),
                    last.column(),
                    "These quotes stand in a heading, so they are not called.",
                    "Own calls stand at the end of a line that begins with counts.");
        } else if (quoted && !areCalls(last.text())) {
            problems.note(
                    "calls_without_counts",
                    line.number(),
                    last.column(),
                    "These quotes stand on a line without counts, so they are not called.",
                    "Own calls stand at the end of a line that begins with counts.");
        } else if (quoted) {
            problems.warning(
                    "calls_without_counts",
                    line.number(),
                    last.column(),
                    "These quotes stand on a line without counts, so they are not called.",
                    "Own calls stand at the end of a line that begins with counts.");
        }
    }

    /** Short words, parted by commas; "Lovely with a slower tune as well" is none. */
    private static boolean areCalls(String quoted) {
        return quoted.indexOf(',') >= 0
                && Arrays.stream(quoted.split(",", -1))
                        .allMatch(call -> call.strip().split("\\s+", -1).length <= LONGEST_CALL);
    }

    private static final int LONGEST_CALL = 2;

    List<OwnCall> read(List<Token> tokens, List<Step> steps) {
        List<OwnCall> calls = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (token.is(Token.Kind.UNCLOSED_QUOTE)) {
                problems.error(
                        "unclosed_quote",
                        line,
                        token.column(),
                        "These quotes are not closed.",
                        "Add a second \" at the end of the line.");
            } else if (token.is(Token.Kind.QUOTED) && isWithin(tokens, i)) {
                problems.warning(
                        "quote_within",
                        line,
                        token.column(),
                        "Quotes in the middle of a line are not read.",
                        "Own calls stand at the end of the line.");
            } else if (token.is(Token.Kind.QUOTED)) {
                calls.addAll(calls(token, steps));
            }
        }
        return calls;
    }

    /** Whether words follow; a full stop, or brackets with a clock time, may stand behind the calls. */
    private static boolean isWithin(List<Token> tokens, int quoted) {
        int depth = 0;
        for (Token token : tokens.subList(quoted + 1, tokens.size())) {
            depth += token.is(Token.Kind.OPEN) ? 1 : token.is(Token.Kind.CLOSE) ? -1 : 0;
            boolean beside = depth > 0
                    || token.is(Token.Kind.CLOSE)
                    || token.is(Token.Kind.SEPARATOR)
                    || token.is(Token.Kind.MARK)
                    || token.is(Token.Kind.CLOCK);
            if (!beside) {
                return true;
            }
        }
        return false;
    }

    private List<OwnCall> calls(Token quoted, List<Step> steps) {
        String[] words = quoted.text().split(",", -1);
        if (words.length > steps.size()) {
            problems.error(
                    "own_calls",
                    line,
                    quoted.column(),
                    words.length + " calls are written for " + steps.size()
                            + (steps.size() == 1 ? " action." : " actions."),
                    "Write at most one call an action, \"-\" for silence.");
        }
        List<OwnCall> calls = new ArrayList<>();
        for (int i = 0; i < Math.min(words.length, steps.size()); i++) {
            String call = words[i].strip();
            if (call.isEmpty()) {
                problems.error(
                        "own_calls",
                        line,
                        quoted.column(),
                        "Call " + (i + 1) + " in these quotes is empty.",
                        "Write \"-\" for silence.");
            }
            calls.add(new OwnCall(steps.get(i).count(), SILENCE.contains(call) ? "" : call));
        }
        return calls;
    }
}
