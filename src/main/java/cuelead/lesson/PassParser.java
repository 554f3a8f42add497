package cuelead.lesson;

import cuelead.lesson.LineScanner.Found;
import cuelead.lesson.Pass.Over;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;
import cuelead.plan.Timeline;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Parses one line of a lesson, whose parts may stand in any order. */
final class PassParser {
    private static final String LEVELS =
            Arrays.stream(CallLevel.values()).map(CallLevel::word).collect(Collectors.joining("|"));
    private static final String TO = "(?:to |over |with )?(?:the )?";
    private static final String CALLS = "(?:with )?calls?:? ";
    private static final String FIELDS =
            "Beside its piece a line has a pace (walk, steady, full, 72 %, 96), how often (3 times), clicks or music,"
                    + " and which calls (calls figures, fading).";

    private final List<LineRule> rules = new ArrayList<>();
    private final Danceable danceable;
    private final String pieces;

    PassParser(Timeline timeline) {
        danceable = new Danceable(timeline);
        pieces = PieceRules.pieces(timeline.dance());
        rules.add(new LineRule("once|one time", (found, draft) -> draft.times.say(1, found)));
        rules.add(new LineRule("twice", (found, draft) -> draft.times.say(2, found)));
        rules.add(new LineRule(
                "(?<times>" + SpelledNumber.PATTERN + ")\\s*(?:times|x)",
                (found, draft) -> draft.times.say(times(found), found)));
        addCalls();
        rules.add(new LineRule(
                TO + "clicks?|(?:no|without) music", (found, draft) -> draft.over.say(Over.CLICKS, found)));
        rules.add(new LineRule(TO + "(?:music|song)", (found, draft) -> draft.over.say(Over.MUSIC, found)));
        rules.addAll(PieceRules.of(timeline.dance()));
        rules.addAll(PaceRules.of(timeline.countTempo()));
    }

    private void addCalls() {
        rules.add(new LineRule(
                CALLS + "fading|fading(?: calls)?", (found, draft) -> draft.fading.say(Fading.WALL_BY_WALL, found)));
        rules.add(new LineRule("(?:no|without) calls", (found, draft) -> draft.level.say(CallLevel.NONE, found)));
        rules.add(new LineRule(
                CALLS + "(?<level>" + LEVELS + ")", (found, draft) -> draft.level.say(level(found), found)));
        rules.add(new LineRule(CALLS + "(?<word>\\p{L}+)", (found, draft) -> {
            throw new LessonMistake(
                    found.column(),
                    "\"" + found.group("word").orElseThrow() + "\" is no call level.",
                    "Write calls words, figures, sections, changes or none, and fading or not.");
        }));
    }

    Pass parse(String text) throws LessonMistake {
        LineScanner line = new LineScanner(text);
        PassDraft draft = new PassDraft();
        while (line.hasMore()) {
            if (!isUnderstood(line, draft)) {
                throw notUnderstood(line.stretch(), draft);
            }
        }
        Pass pass = draft.pass(pieces);
        danceable.check(pass, draft.piece.column());
        return pass;
    }

    private boolean isUnderstood(LineScanner line, PassDraft draft) throws LessonMistake {
        for (LineRule rule : rules) {
            if (rule.applies(line, draft)) {
                return true;
            }
        }
        return false;
    }

    private LessonMistake notUnderstood(Found found, PassDraft draft) {
        boolean isPiece = draft.piece.value().isEmpty();
        return new LessonMistake(
                found.column(),
                "\"" + found.text() + "\" is " + (isPiece ? "no piece of a dance." : "not understood."),
                isPiece ? pieces : FIELDS);
    }

    private static int times(Found found) throws LessonMistake {
        BigDecimal times = SpelledNumber.value(found.group("times").orElseThrow());
        boolean isWhole = times.stripTrailingZeros().scale() <= 0;
        if (!isWhole || times.intValue() < 1 || times.intValue() > Pass.MOST_TIMES) {
            throw new LessonMistake(
                    found.column(),
                    "A pass goes 1 to " + Pass.MOST_TIMES + " times, not " + found.text() + ".",
                    "Write the line again for more.");
        }
        return times.intValue();
    }

    private static CallLevel level(Found found) {
        return CallLevel.valueOf(found.group("level").orElseThrow().toUpperCase(Locale.ROOT));
    }
}
