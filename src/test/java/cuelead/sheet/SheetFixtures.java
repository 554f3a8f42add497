package cuelead.sheet;

import cuelead.dance.DanceCheck;
import cuelead.dance.Section;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;

/** A small right sheet, and what is reported of a text. */
final class SheetFixtures {
    static final String HEAD = "MOORING LINES\nCount: 16   Wall: 1   Level: Beginner\n";
    static final String FIRST_EIGHT = """
            [1-8] VINE RIGHT AND LEFT
            1-2 Step R to side, step L behind R
            3-4 Step R to side, touch L beside R
            5-6 Step L to side, step R behind L
            7-8 Step L to side, touch R beside L
            """;
    static final String SECOND_EIGHT = """
            [9-16] ROCKING CHAIR, SIDE TOUCHES
            1-4 Rock R fwd, recover L, rock R back, recover L
            5-6 Step R to side, touch L beside R
            7-8 Step L to side, touch R beside L
            """;
    static final String SHEET = HEAD + FIRST_EIGHT + SECOND_EIGHT;

    private SheetFixtures() {}

    /** Of the reader, then of the checker. */
    static List<Problem> problems(String text) {
        ReadSheet read = SheetReader.read("sheet.txt", text);
        List<Problem> problems = new ArrayList<>(read.problems());
        read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, "sheet.txt")));
        return problems;
    }

    /** {@code line:column kind} of each. */
    static List<String> places(String text) {
        return problems(text).stream()
                .map(problem -> problem.line() + ":" + problem.column() + " " + problem.kind())
                .toList();
    }

    /** The first section of a text that is read as a dance. */
    static Section firstSection(String text) {
        return SheetReader.read("sheet.txt", text)
                .dance()
                .orElseThrow()
                .parts()
                .get(0)
                .sections()
                .get(0);
    }

    static List<String> messages(String text) {
        return problems(text).stream().map(Problem::message).toList();
    }
}
