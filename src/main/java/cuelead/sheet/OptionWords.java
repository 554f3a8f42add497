package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a line offers instead of its steps: "(easy option: walk R, L)", "Non-turning option for counts 5-8: vine L, touch",
 * "... - alternatively rock the chair".
 *
 * @param words   the easier steps, as the sheet says them
 * @param column  0-based index of the offer in its line
 * @param first   the first count that the offer itself names
 * @param last    the last one
 * @param section number of the section that it names
 * @param replaced what it says that it is danced for; empty where it does not
 */
record OptionWords(
        String words, int column, OptionalInt first, OptionalInt last, OptionalInt section, String replaced) {
    private static final String NAME =
            "(?:(?:easy|easier|simple|simpler|non[- ]?turn(?:ing)?|no[- ]turn(?:ing)?|low[- ]impact"
                    + "|gentler?|beginners?['\u2019]?s?)\\s+)*(?:options?|alternatives?|variations?)\\b|(?:easy|easier|simpler|beginners?)(?=\\s*[:\\-\u2013\u2014=])"
                    + "|alternatively\\b|optional(?:ly)?\\b";
    private static final Pattern IN_BRACKETS = pattern(
            "[(\\[{]\\s*(?:[*\u2020\u2021\u00b9\u00b2\u00b3]\\s*)?(?:" + NAME + "|or\\b)([^()\\[\\]{}]*)[)\\]}]");
    private static final Pattern NAMED_BEHIND = pattern(
            "[(\\[{]([^()\\[\\]{}]+?)\\s+(?:(?:is|as|for)\\s+)?(?:the\\s+|an?\\s+)?(?:easy|easier|simpler|non[- ]?turning)\\s+"
                    + "(?:option|alternative|version|way)\\s*[)\\]}]");
    private static final Pattern LINE =
            pattern("^[\\s*\u2022\u2020\u2021\u00b9\u00b2\u00b3\\-\u2013]*(?:" + NAME + ")(.*)$");
    private static final Pattern TAIL = pattern("(?:[.;!]\\s+|\\s[-\u2013\u2014]\\s+)(?:" + NAME + ")(.*)$");

    private static final Pattern SECTION =
            pattern("^\\W*(?:for|in|of)?\\s*(?:section|sec\\.?|s)\\s*(\\d{1,2})\\b[\\s,:]*");
    private static final Pattern COUNTS = pattern(
            "^\\W*(?:for|on|of|replacing)?\\s*(?:the\\s+)?(?:counts?|beats?|steps?)?\\s*(\\d{1,2})&?(?:\\s*(?:[-\u2013&]|to|and)\\s*(\\d{1,2}))?(?![\\d/])");
    private static final Pattern COUNTS_BEHIND = pattern(
            "\\s(?:on|for|in)\\s+(?:counts?|beats?)\\s*(\\d{1,2})(?:\\s*(?:[-\u2013&]|to|and)\\s*(\\d{1,2}))?\\W*$");
    private static final Pattern FOR_SOMETHING =
            pattern("^\\W*(?:for|to|instead of)\\s+[^:,\u2013\u2014=]{2,50}?\\s*(?:[:,=]|\\s[-\u2013\u2014])\\s*");
    private static final Pattern LINK = pattern(
            "^[\\s:,=.\\-\u2013\u2014]*(?:(?:is|are|would be|could be|can be)\\s+)?(?:to\\s+)?(?:(?:you (?:can|may|could)|just|simply|do|dance|try|use)\\s+)*");
    private static final Pattern REPLACED = pattern("^replace\\b(.*?)\\b(?:with|by)\\s+(.*)$");
    private static final Pattern INSTEAD = pattern("^(.*?)\\s*,?\\s*instead(?:\\s+of\\b.*)?$");

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** All that a line offers, in order. */
    static List<OptionWords> of(String line) {
        List<OptionWords> found = new ArrayList<>();
        Matcher whole = LINE.matcher(line);
        if (whole.find()) {
            of(whole.group(1), whole.start(1)).ifPresent(found::add);
            return found;
        }
        for (Pattern brackets : List.of(IN_BRACKETS, NAMED_BEHIND)) {
            Matcher matcher = brackets.matcher(line);
            while (matcher.find()) {
                of(matcher.group(1), matcher.start()).ifPresent(found::add);
            }
        }
        Matcher tail = TAIL.matcher(line);
        if (found.isEmpty() && tail.find()) {
            of(tail.group(1), tail.start()).ifPresent(found::add);
        }
        return found;
    }

    /** A line with blanks in the place of an offer behind its steps. */
    static String withoutTail(String line) {
        Matcher tail = TAIL.matcher(line);
        return tail.find() ? line.substring(0, tail.start()) + " ".repeat(line.length() - tail.start()) : line;
    }

    private static Optional<OptionWords> of(String offered, int column) {
        Cutter rest = new Cutter(offered);
        Optional<Matcher> section = rest.cut(SECTION);
        Optional<Matcher> counts = rest.cut(COUNTS).or(() -> rest.cutOff(COUNTS_BEHIND));
        Optional<Matcher> something = rest.cut(FOR_SOMETHING);
        rest.cut(LINK);
        Matcher replaced = REPLACED.matcher(rest.text.strip());
        String instead = something.map(Matcher::group).orElseGet(() -> replaced.find() ? replaced.group(1) : "");
        String words = inner(inner(rest.text, REPLACED), INSTEAD).strip().replaceAll("[\\s.*]+$", "");
        OptionalInt first = counts.map(found -> OptionalInt.of(Integer.parseInt(found.group(1))))
                .orElse(OptionalInt.empty());
        OptionalInt last = counts.filter(found -> found.group(2) != null)
                .map(found -> OptionalInt.of(Integer.parseInt(found.group(2))))
                .orElse(first);
        OptionalInt number = section.map(found -> OptionalInt.of(Integer.parseInt(found.group(1))))
                .orElse(OptionalInt.empty());
        return words.isEmpty()
                ? Optional.empty()
                : Optional.of(new OptionWords(words, column, first, last, number, instead.strip()));
    }

    private static String inner(String words, Pattern pattern) {
        Matcher matcher = pattern.matcher(words.strip());
        return matcher.find() ? matcher.group(matcher.groupCount()) : words;
    }

    /** Takes what a text begins or ends with off it. */
    private static final class Cutter {
        private String text;

        private Cutter(String text) {
            this.text = text;
        }

        private Optional<Matcher> cutOff(Pattern pattern) {
            Matcher matcher = pattern.matcher(text);
            if (!matcher.find()) {
                return Optional.empty();
            }
            text = text.substring(0, matcher.start());
            return Optional.of(matcher);
        }

        private Optional<Matcher> cut(Pattern pattern) {
            Matcher matcher = pattern.matcher(text);
            if (!matcher.find() || matcher.end() == 0) {
                return Optional.empty();
            }
            text = text.substring(matcher.end());
            return Optional.of(matcher);
        }
    }
}
