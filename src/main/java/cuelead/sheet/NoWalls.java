package cuelead.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Clock times in brackets behind the steps that are no wall and no corner: "(7:00)", "(13:00)", "[7 o'clock]". */
final class NoWalls {
    private static final Pattern CLOCK = Pattern.compile(
            "[(\\[]\\s*(?:facing )?((\\d{1,2})(?:[:.](00|30)|\\s*o'? ?clock))\\s*[)\\]]", Pattern.CASE_INSENSITIVE);
    /** "Angle to 11:00": the corner is meant. */
    private static final Pattern CORNER = Pattern.compile(
            "\\b(?:diag\\w*|angl\\w*|corner\\w*|toward\\w*|body|1/8|3/8|5/8|7/8)", Pattern.CASE_INSENSITIVE);

    private NoWalls() {}

    /** The first of a line that turns by whole walls. */
    static Optional<Phrase.Stated<String>> in(String text) {
        Matcher clock = CLOCK.matcher(text);
        boolean corners = CORNER.matcher(text).find();
        while (!corners && clock.find()) {
            int halfHours = Integer.parseInt(clock.group(2)) * 2 + ("30".equals(clock.group(3)) ? 1 : 0);
            boolean onClock = halfHours >= 2 && halfHours <= 25;
            if (!onClock || halfHours % 3 != 0) {
                return Optional.of(new Phrase.Stated<>(clock.group(1), clock.start(1) + 1));
            }
        }
        return Optional.empty();
    }

    /** Tells of a clock time that no turn of whole walls comes to. */
    static void report(SheetLine line, Problems problems) {
        in(line.text())
                .ifPresent(clock -> problems.error(
                        "wrong_clock",
                        line.number(),
                        clock.column(),
                        "The sheet says " + clock.value() + " here, which is no wall.",
                        "The walls are at 12:00, 3:00, 6:00 and 9:00."));
    }
}
