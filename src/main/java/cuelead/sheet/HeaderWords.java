package cuelead.sheet;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Other words for the facts of a header: "32/4/Beginner", "Lead-in: 16", "Intro: 2 x 8", "104 beats per minute". */
final class HeaderWords {
    private static final int FLAGS = Pattern.CASE_INSENSITIVE;
    private static final String SPELLED =
            "four|eight|twelve|sixteen|twenty[- ]four|thirty[- ]two|forty[- ]eight|sixty[- ]four";
    private static final List<Map.Entry<Pattern, String>> USUAL = List.of(
            Map.entry(
                    Pattern.compile("^\\W*(?:dance(?: name)?|name(?: of (?:the )?dance)?)\\s*[:=]\\s*(?=\\S)", FLAGS),
                    "Title: "),
            Map.entry(
                    Pattern.compile(
                            "\\b(?:music tempo|tempo|speed|beats per minute|mm)\\s*[:=]?\\s*(?=\\d{2,3}\\s*(?:[,;|.]|$))",
                            FLAGS),
                    "BPM: "),
            Map.entry(
                    Pattern.compile(
                            "(?<=\\d)\\s*beats? (?:per|a|each|(?:to|in) (?:the|a|every|one)) (?:minute|min)\\b", FLAGS),
                    " bpm"),
            Map.entry(
                    Pattern.compile(
                            "(?<=\\d)\\s*(?:times|tempos?|temps|tiempos|tempi|beats?)\\b(?!\\s*(?:a|per|each|to|in (?:the|a))\\b)",
                            FLAGS),
                    " counts"),
            Map.entry(Pattern.compile("#\\s?(\\d{1,3}) intro\\b", FLAGS), "Intro $1"),
            Map.entry(Pattern.compile("(?<=[/|,;] )(\\d{1,3}) in(?=\\s*(?:[,;/|.]|$))", FLAGS), "Intro $1"),
            Map.entry(Pattern.compile("\\b(?:lead[- ]in|count[- ]in)\\s*(?=[:=]?\\s*\\d)", FLAGS), "Intro"),
            Map.entry(Pattern.compile("\\b(?:in|enter) (?:on|after)\\s+(?=\\d{1,3}\\b)", FLAGS), "Intro "),
            Map.entry(
                    Pattern.compile(
                            "\\b(?:wait|hold|leave|skip|let|listen|ignore|allow|miss)\\b[^.;:,\\d]{0,40}?(?=\\b(?:\\d{1,3}|"
                                    + SPELLED + ")[- ](?:counts?|beats?)\\b)",
                            FLAGS),
                    "Intro "),
            Map.entry(
                    Pattern.compile(
                            "\\b(?:start|begin)(?:s|ning|ing)?\\b(?:\\s*:\\s*|[^.;:\\d]{0,40}\\b(?:vocals?|lyrics?|words?|sing(?:s|ing|er)|"
                                    + "verse|music|drums?)\\b[^.;:\\d]{0,30}?[(,–-]\\s*)(?:approx\\.?\\s|about\\s|after\\s)?"
                                    + "(?=\\d{1,3}[- ]?(?:counts?|beats?|cts?)\\b)",
                            FLAGS),
                    "Intro "),
            Map.entry(
                    Pattern.compile("(?<=\\d)\\s*(?:counts?|beats?) in\\b(?!\\s*(?:the|each|a|every|all))", FLAGS),
                    " count intro"));
    /** "32/4/Beginner" */
    private static final Pattern BARE =
            Pattern.compile("^\\W*(\\d{2,3})\\s*[/|,]\\s*([1248])\\s*[/|,]\\s*(?=[A-Za-z])");

    private static final Pattern EIGHTS = Pattern.compile(
            "\\b((?:intro(?:duction)?|wait|start after|begin after)\\W+)([1-9])(?:\\s?(?:x|sets? of|lots of)\\s?|\\s)"
                    + "(?:([68])(?:'?s)?|(eight|six)(?:e?s)?)\\b(?:\\s*counts?)?",
            FLAGS);

    private HeaderWords() {}

    /** The same line in the usual words. */
    static SheetLine usual(SheetLine line) {
        SheetLine usual = line;
        for (Map.Entry<Pattern, String> words : USUAL) {
            Matcher found = words.getKey().matcher(usual.text());
            if (found.find()) {
                String told = words.getValue().replace("$1", found.groupCount() > 0 ? found.group(1) : "");
                usual = usual.with(found.start(), found.end(), told);
            }
        }
        Matcher bare = BARE.matcher(usual.text());
        if (bare.find()) {
            usual = usual.with(bare.start(), bare.end(), bare.group(1) + " counts, " + bare.group(2) + " walls, ");
        }
        Matcher eights = EIGHTS.matcher(usual.text());
        if (eights.find()) {
            boolean six = "6".equals(eights.group(3)) || "six".equalsIgnoreCase(eights.group(4));
            int counts = Integer.parseInt(eights.group(2)) * (six ? 6 : 8);
            usual = usual.with(eights.start(2), eights.end(), counts + " counts");
        }
        return usual;
    }
}
