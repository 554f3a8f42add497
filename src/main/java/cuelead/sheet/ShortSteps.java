package cuelead.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Short and other words for steps in the usual ones: "R x L" for across, "w/" for with, "cross/rock" and
 * "kick/ball/change" for one figure, "swivel heels R, C" for the centre.
 */
final class ShortSteps {
    private static final List<Word> WORDS = List.of(
            Word.of("w/", "\\bw/\\s?(?=\\S)", "with "),
            Word.of(" x ", "(?<=\\b[rl]f?\\s)x(?=\\s(?:over )?[rl]f?\\b)", "across"),
            Word.of("/", "(?<=\\b(?:cross|side|kick|ball))\\s?/\\s?(?=(?:rock|shuffle|touch|ball|change)\\b)", " "),
            Word.of(" by ", "(?<!followed )(?<!led )\\bby(?= (?:the )?(?:[rl]f?|right|left)\\b)", "beside"),
            Word.of("heel strut", "\\btoe[- ]heel (?=struts?\\b)", "toe "),
            Word.of("figure ", "\\bfigure (?:of )?(?:8|eight)\\b(?: grapevine)?", "figureeight"),
            Word.of("rock/step", "\\brock/step\\b", "rock"),
            Word.of(
                    "lift ",
                    "\\blift (?:the |your )?(left|right|[lr]f?)(?: foot| leg)?(?: up)? and cross (?:it )?(?:in front of|over|across)"
                            + " (?:the |your )?(left|right|[lr]f?)(?: leg| foot)?(?: shin| knee)\\b",
                    "hook $1 over $2 shin"),
            Word.of(
                    " shin",
                    "\\bcross (?:the |your )?(left|right|[lr]f?)(?: foot| leg)? (?:in front of|over|across) (?:the |your )?"
                            + "(left|right|[lr]f?)(?: leg| foot)? shin\\b",
                    "hook $1 over $2 shin"),
            Word.of("] repeat", "^\\s*\\[\\d{1,3}\\]\\s+(?=repeat\\W*$)", ""),
            Word.of("rpt", "^\\W*rpt\\W*$", "Repeat"),
            Word.of("reverse ", "\\breverse (?=(?:\\S+ )?pivot\\b)", ""),
            Word.of("jaz ", "\\bjaz(?= (?:box|square)\\b)", "jazz"),
            Word.of(
                    "side together side ",
                    "\\bside together side (?=(?:touch|scuff|hitch|kick|hold|brush|flick|clap|stomp|point)\\b)",
                    "side, together, side, "),
            Word.of(", c", "(?<=\\b(?:[rl]|right|left|centre),\\s?)c(?=\\s*[,;.(]|\\s*$)", "centre"));

    private ShortSteps() {}

    /**
     * A word and what it stands for.
     *
     * @param part of every line that holds it, in lower case, so that other lines are not searched
     */
    private record Word(String part, Pattern pattern, String usual) {
        static Word of(String part, String pattern, String usual) {
            return new Word(part, Pattern.compile(pattern, Pattern.CASE_INSENSITIVE), usual);
        }

        SheetLine spelled(SheetLine line) {
            SheetLine spelled = line;
            Matcher found = pattern.matcher(spelled.text());
            for (int from = 0; found.find(from); found = pattern.matcher(spelled.text())) {
                String told = usual.contains("$")
                        ? usual.replace("$1", found.group(1)).replace("$2", found.group(2))
                        : usual;
                spelled = spelled.with(found.start(), found.end(), told);
                from = found.start() + told.length();
            }
            return spelled;
        }
    }

    /** The same lines in the usual words. */
    static List<SheetLine> spelled(List<SheetLine> lines) {
        return lines.stream().map(ShortSteps::spelled).toList();
    }

    private static SheetLine spelled(SheetLine line) {
        String lower = line.text().toLowerCase(Locale.ROOT);
        SheetLine spelled = line;
        for (Word word : WORDS) {
            spelled = lower.contains(word.part()) ? word.spelled(spelled) : spelled;
        }
        return spelled;
    }
}
