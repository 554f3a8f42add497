package cuelead.lesson;

import cuelead.lesson.LineScanner.Found;
import cuelead.time.Tempo;
import java.math.BigDecimal;
import java.util.List;

/** How fast a pass goes, in words: by name, as a share of full speed, or as a tempo. */
final class PaceRules {
    /** Of a tempo that is worked out from seconds. */
    private static final double ROUNDING = 1e-6;

    private final Tempo full;

    private PaceRules(Tempo full) {
        this.full = full;
    }

    /** @param full counts a minute at full speed */
    static List<LineRule> of(Tempo full) {
        PaceRules all = new PaceRules(full);
        String at = "(?:at )?(?:an? )?";
        String number = "(?<number>" + SpelledNumber.PATTERN + ")";
        return List.of(
                rule(at + "(?<name>" + PaceName.choices() + ")(?: (?:speed|pace|tempo))?", PaceRules::named),
                rule(at + number + "\\s*(?:%|per\\s*cent)(?: of full speed)?", PaceRules::share),
                rule(at + "(?:tempo )?" + number + "(?:\\s*bpm|(?: beats| counts)? (?:a|per) minute)?", all::tempo));
    }

    /** How a pace is made of what was found. */
    private interface Meaning {
        Pace of(Found found) throws LessonMistake;
    }

    private static LineRule rule(String words, Meaning meaning) {
        return new LineRule(words, (found, draft) -> draft.pace.say(meaning.of(found), found));
    }

    private static Pace named(Found found) {
        return PaceName.of(found.group("name").orElseThrow()).pace();
    }

    private static Pace share(Found found) throws LessonMistake {
        double ofFull = number(found).movePointLeft(2).doubleValue();
        if (ofFull < Pace.Share.LEAST || ofFull > Pace.Share.MOST) {
            throw outOfRange(found, "A share of full speed is 40 to 125 %");
        }
        return new Pace.Share(ofFull);
    }

    private Pace tempo(Found found) throws LessonMistake {
        double slowest = Math.ceil(full.beatsPerMinute() * Pace.Share.LEAST - ROUNDING);
        double fastest = Math.floor(full.beatsPerMinute() * Pace.Share.MOST + ROUNDING);
        double tempo = number(found).doubleValue();
        if (tempo < slowest || tempo > fastest) {
            String range = (long) slowest + " to " + (long) fastest;
            throw outOfRange(
                    found, "A tempo of this dance is " + range + " beats a minute (40 to 125 % of full speed)");
        }
        return new Pace.Beats(new Tempo(tempo));
    }

    private static BigDecimal number(Found found) {
        return SpelledNumber.value(found.group("number").orElseThrow());
    }

    private static LessonMistake outOfRange(Found found, String range) {
        return new LessonMistake(
                found.column(), range + ", not " + found.text() + ".", "Write walk, steady, full or a number between.");
    }
}
