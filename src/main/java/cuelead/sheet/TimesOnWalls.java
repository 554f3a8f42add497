package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** How often a tag is danced where that differs from wall to wall: "after wall 3, and twice after wall 6". */
final class TimesOnWalls {
    private static final Pattern BETWEEN = Pattern.compile(
            "[,;.()]|(?:\\b(?:and|but|then)\\b|&)(?=\\s*(?:at|after|on|the|end|also|twice|once|x ?\\d|\\d ?x|\\w+ times)\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ONCE = Pattern.compile("\\bonce\\b|\\b1 ?x\\b|\\bx ?1\\b", Pattern.CASE_INSENSITIVE);

    private TimesOnWalls() {}

    /** {@code times} is 0 where it is not told. */
    private record Said(List<Integer> walls, int times) {
        static Said of(String words) {
            int times = TagTimes.in(words);
            boolean told = times > 1 || ONCE.matcher(words).find();
            return new Said(WallNote.read(Scanner.tokens(words)).walls(), told ? times : 0);
        }
    }

    /**
     * What is said of single walls. "Danced twice, after walls 2 and 4" may count both of them: where one number of times
     * stands first, or stands alone, it is not of single walls.
     *
     * @return times by their walls; empty where nothing differs
     */
    static Map<Integer, Integer> in(String text) {
        List<Said> clauses = new ArrayList<>();
        for (String words : BETWEEN.split(text)) {
            Said said = Said.of(words);
            int last = clauses.size() - 1;
            boolean behindItsWall = said.walls().isEmpty()
                    && said.times() > 0
                    && last >= 0
                    && clauses.get(last).times() == 0;
            if (behindItsWall) {
                clauses.set(last, new Said(clauses.get(last).walls(), said.times()));
            } else if (!said.walls().isEmpty()) {
                clauses.add(said);
            }
        }
        boolean once = clauses.stream().anyMatch(said -> said.times() == 1);
        boolean later = clauses.size() > 1
                && clauses.get(0).times() == 0
                && clauses.stream()
                        .anyMatch(said -> said.times() > 1 && said.walls().size() == 1);
        return once || later ? times(clauses) : Map.of();
    }

    /** What a line below the steps of a tag says of walls alone: "Dance the tag twice on wall 4"; else empty. */
    static Map<Integer, Integer> below(SheetLine line) {
        Said said = Said.of(line.text());
        boolean told = said.times() > 1 && TagTimes.isAboutTimes(line) && DanceLine.movesNothing(line.text());
        return told ? times(List.of(said)) : Map.of();
    }

    private static Map<Integer, Integer> times(List<Said> clauses) {
        Map<Integer, Integer> times = new TreeMap<>();
        clauses.forEach(said -> said.walls().forEach(wall -> times.put(wall, Math.max(1, said.times()))));
        return times;
    }
}
