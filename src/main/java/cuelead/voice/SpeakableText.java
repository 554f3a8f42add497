package cuelead.voice;

import cuelead.english.NumberWords;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A call as it is written made into words that a synthesizer reads right: fractions of a turn, clock times, numbers
 * and the trade's abbreviations are spelled out, and everything that is not a letter goes.
 */
public final class SpeakableText {
    private static final Pattern CLOCK = Pattern.compile("\\b(1[0-2]|0?[1-9])[:.]([0-5][0-9])\\b");
    private static final Pattern MIXED = Pattern.compile("\\b(\\d+) +(\\d+) ?/ ?(\\d+)");
    private static final Pattern FRACTION = Pattern.compile("\\b(\\d+) ?/ ?(\\d+)");
    private static final Pattern TIMES = Pattern.compile("\\bx ?(\\d+)\\b|\\b(\\d+) ?x\\b");
    private static final Pattern ORDINAL = Pattern.compile("\\b(\\d+)(st|nd|rd|th)\\b");
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final int MOST_ASCII = 127;
    /** "RLR": a triple by its feet. */
    private static final Pattern FEET = Pattern.compile("\\b[rl]{2,4}\\b");

    /** Names such as "part a to b" or "section a one", in which "a" is a letter and no article. */
    private static final Pattern PARTS = Pattern.compile("\\b(?:part|sections?) (?:a|[a-z] [a-z ]*\\ba)\\b.*");

    private static final String LETTER_A = "ay";

    private static final Map<String, String> SHORT = Map.ofEntries(
            Map.entry("r", "right"),
            Map.entry("rt", "right"),
            Map.entry("l", "left"),
            Map.entry("lt", "left"),
            Map.entry("rf", "right foot"),
            Map.entry("lf", "left foot"),
            Map.entry("fwd", "forward"),
            Map.entry("fw", "forward"),
            Map.entry("frwd", "forward"),
            Map.entry("bk", "back"),
            Map.entry("bwd", "back"),
            Map.entry("tog", "together"),
            Map.entry("x", "cross"),
            Map.entry("beh", "behind"),
            Map.entry("rec", "recover"),
            Map.entry("piv", "pivot"),
            Map.entry("shfl", "shuffle"),
            Map.entry("diag", "diagonal"),
            Map.entry("wt", "weight"),
            Map.entry("ft", "foot"),
            Map.entry("ct", "count"),
            Map.entry("cts", "counts"),
            Map.entry("cw", "clockwise"),
            Map.entry("ccw", "counter clockwise"),
            Map.entry("kbc", "kick ball change"),
            Map.entry("bsc", "behind side cross"));

    private SpeakableText() {}

    /** Lower-case words with single spaces; empty when nothing is left that can be spoken. */
    public static Optional<String> of(String words) {
        String text = plainLetters(words);
        text = replace(CLOCK, text, m -> NumberWords.clock(number(m, 1), number(m, 2)));
        text = replace(
                MIXED,
                text,
                m -> NumberWords.cardinal(m.group(1)) + " and a " + NumberWords.fraction(m.group(2), m.group(3)));
        text = replace(FRACTION, text, m -> NumberWords.fraction(m.group(1), m.group(2)));
        text = replace(TIMES, text, m -> times(m.group(1) != null ? m.group(1) : m.group(2)));
        text = replace(ORDINAL, text, m -> NumberWords.ordinal(m.group(1)));
        text = replace(NUMBER, text, m -> NumberWords.cardinal(m.group()));
        text = text.replaceAll("[&+]", " and ").replace("w/", "with ").replaceAll("[^a-z']", " ");
        text = replace(FEET, text, m -> String.join(" ", m.group().split("")));
        StringBuilder spoken = new StringBuilder();
        for (String token : text.split(" +")) {
            String word = token.replaceAll("^'+|'+$", "");
            if (!word.isEmpty()) {
                spoken.append(SHORT.getOrDefault(word, word)).append(' ');
            }
        }
        String said = replace(PARTS, spoken.toString().strip(), m -> m.group().replaceAll("\\ba\\b", LETTER_A));
        return Optional.of(said.strip()).filter(all -> !all.isEmpty());
    }

    /** Letters and digits of the words that no English voice can say, each once; empty where all can be said. */
    public static String unsaid(String words) {
        StringBuilder unsaid = new StringBuilder();
        plainLetters(words)
                .codePoints()
                .filter(letter -> letter > MOST_ASCII && Character.isLetterOrDigit(letter))
                .distinct()
                .forEach(unsaid::appendCodePoint);
        return unsaid.toString();
    }

    /** Lower case without accents; single-character fractions as "1/4" with room around; plain apostrophes. */
    private static String plainLetters(String words) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            String parts = Normalizer.normalize(String.valueOf(letter), Normalizer.Form.NFKD);
            text.append(parts.indexOf('\u2044') > 0 ? " " + parts.replace('\u2044', '/') + " " : letter);
        }
        return Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replace('\u2044', '/')
                .replaceAll("[\u2018\u2019\u02bc]", "'")
                .toLowerCase(Locale.ROOT);
    }

    private static String times(String digits) {
        return digits.equals("2") ? "twice" : NumberWords.cardinal(digits) + " times";
    }

    private static int number(MatchResult match, int group) {
        return Integer.parseInt(match.group(group));
    }

    private static String replace(Pattern pattern, String text, Function<MatchResult, String> words) {
        return pattern.matcher(text).replaceAll(match -> " " + words.apply(match) + " ");
    }
}
