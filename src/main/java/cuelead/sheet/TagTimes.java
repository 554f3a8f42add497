package cuelead.sheet;

import cuelead.dance.Section;
import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How often a tag is danced in a row: "x2", "twice", "do these 4 counts two times", "repeat the 4 counts". */
final class TagTimes {
    private static final String TIMES = "\\btwice\\b|\\bthrice\\b|\\b(?<before>\\d|two|three|four) ?(?:x|times)(?!\\w)"
            + "|(?<!\\w)x ?(?<behind>\\d)\\b";
    private static final Pattern TOLD = Pattern.compile(TIMES, Pattern.CASE_INSENSITIVE);
    private static final String WHAT =
            "\\b(?:tag|bridge|(?:it|this|these|them|those|all)\\b|(?:above|the) (?:\\w+ )?(?:counts|beats|steps))";
    /** Of a line below the steps of a tag. */
    private static final Pattern REPEATS =
            Pattern.compile("^\\W*(?:then )?repeat (?:the )?(?:" + WHAT + ")[^:]*$", Pattern.CASE_INSENSITIVE);

    private static final Pattern DOES = Pattern.compile(
            "^\\W*(?:(?:on|at the end of|after) (?:the )?(?:\\w+ )?wall(?: \\w+)?,? )?(?:(?:do|dance|danced|done|perform|repeat|twice|[2-4] ?x|x ?[2-4])\\b)[^:]*$",
            Pattern.CASE_INSENSITIVE);

    private TagTimes() {}

    /** 1 where nothing is said. */
    static int in(String text) {
        Matcher told = TOLD.matcher(text);
        if (!told.find()) {
            return 1;
        }
        String number = told.group("before") == null ? told.group("behind") : told.group("before");
        if (number == null) {
            return told.group().equalsIgnoreCase("twice") ? 2 : 3;
        }
        int digit = Character.isDigit(number.charAt(0)) ? number.charAt(0) - '0' : 0;
        return Math.max(1, digit > 0 ? digit : NumberWords.value(number).orElse(1));
    }

    /** Of a line below the steps of a tag that dances nothing of its own; 1 where it says nothing of the kind. */
    static int below(SheetLine line) {
        if (line.isBlank() || line.namesWall() || !DanceLine.movesNothing(line.text())) {
            return 1;
        }
        int times = isAboutTimes(line) ? in(line.text()) : 1;
        return times == 1 && REPEATS.matcher(line.text()).find() ? 2 : times;
    }

    /** "(Dance the tag twice)", "Do these 4 counts two times" */
    static boolean isAboutTimes(SheetLine line) {
        return DOES.matcher(line.text()).matches();
    }

    /**
     * The sections of a tag as often as it is danced.
     *
     * @param stated length in counts that the head states, of one time or of all; 0 where it states none
     */
    static List<Section> danced(List<Section> sections, int times, int stated) {
        int written = sections.stream().mapToInt(Section::length).sum();
        boolean once = stated == 0 || stated == written || stated == written * times;
        List<Section> danced = new ArrayList<>(sections);
        for (int time = 1; time < times && once; time++) {
            danced.addAll(sections);
        }
        return danced;
    }
}
