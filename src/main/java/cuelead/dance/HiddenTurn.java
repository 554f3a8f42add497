package cuelead.dance;

import cuelead.dance.Doubt.About;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Whether a line that could not be read hides a turn. One turn that makes several claims of the sheet right at once is
 * likelier than as many mistakes; one that mends a single claim is not.
 */
final class HiddenTurn {
    /** Claims that a turn must mend to be believed. */
    static final int EXPLAINS = 2;

    private static final int EIGHTH_DEGREES = 45;
    private static final int EIGHTHS = 8;
    /** With more lines in doubt than this, hardly anything is known of the turns. */
    private static final int MOST_DOUBTS = 4;

    private final Dance dance;

    HiddenTurn(Dance dance) {
        this.dance = dance;
    }

    /** The dance where any line in doubt may turn anyone. */
    Dance doubtingAll() {
        return dance.with(dance.claims()
                .withDoubts(dance.claims().doubts().stream()
                        .map(doubt -> new Doubt(doubt.part(), doubt.from(), About.WEIGHT_AND_TURNS, doubt.line()))
                        .toList()));
    }

    /** Whether a turn on one of the lines leaves fewer findings; {@code findings} are those without one. */
    boolean explains(int findings, ToIntFunction<Dance> check) {
        List<Doubt> doubts = dance.claims().doubts();
        return doubts.size() > MOST_DOUBTS
                || doubts.stream()
                        .filter(doubt -> doubt.about() == About.WEIGHT)
                        .anyMatch(doubt -> IntStream.range(1, EIGHTHS)
                                .map(eighths -> check.applyAsInt(turned(doubt, new Turn(eighths * EIGHTH_DEGREES))))
                                .anyMatch(left -> findings - left >= EXPLAINS));
    }

    Dance turned(Doubt doubt, Turn turn) {
        return new Dance(
                dance.header(),
                dance.parts().stream().map(part -> turned(part, doubt, turn)).toList(),
                dance.sequence(),
                dance.tags().stream()
                        .map(tag -> new Tag(
                                turned(tag.part(), doubt, turn),
                                tag.afterWalls(),
                                tag.afterCount(),
                                tag.statedFacing(),
                                tag.line()))
                        .toList(),
                dance.restarts(),
                dance.ending(),
                dance.claims());
    }

    private static Part turned(Part part, Doubt doubt, Turn turn) {
        return part.name().equals(doubt.part())
                ? new Part(
                        part.name(),
                        IntStream.range(0, part.sections().size())
                                .mapToObj(i -> turned(part.sections().get(i), countsBefore(part, i), doubt, turn))
                                .toList())
                : part;
    }

    private static Counts countsBefore(Part part, int section) {
        return Counts.of(part.sections().subList(0, section).stream()
                .mapToInt(Section::length)
                .sum());
    }

    /** Its step at that place, or the first one behind it, turns too. */
    private static Section turned(Section section, Counts before, Doubt doubt, Turn turn) {
        int at = IntStream.range(0, section.steps().size())
                .filter(i ->
                        before.plus(section.steps().get(i).count().offset()).compareTo(doubt.from()) >= 0)
                .findFirst()
                .orElse(-1);
        boolean inside = at >= 0
                && doubt.from().compareTo(before) >= 0
                && doubt.from().compareTo(before.plus(Counts.of(section.length()))) < 0;
        return inside
                ? section.with(IntStream.range(0, section.steps().size())
                        .mapToObj(i -> i == at
                                ? section.steps().get(i).turnedBy(turn)
                                : section.steps().get(i))
                        .toList())
                : section;
    }
}
