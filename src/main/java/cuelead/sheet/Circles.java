package cuelead.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "Walk R, L, R, L in a half circle to the right": a turn that is told as the way that the feet go. */
final class Circles {
    private static final String SIZE =
            "half|1/2|\u00bd|quarter|1/4|\u00bc|three[- ]quarters?|3/4|\u00be|full|whole|complete|semi";
    private static final Pattern CIRCLE = Pattern.compile(
            "\\b(?:in|around|round|making|doing|describing|to make)\\s+(?:a\\s+|an\\s+)?(?<size>" + SIZE
                    + ")?[- ]?circle\\b"
                    + "(?:,?\\s+(?:(?:going |turning )?(?:to (?:the |your )?|towards (?:the |your )?)?(?<side>right|left|r|l)\\b"
                    + "|(?<anti>anti-?|counter-?)?clockwise\\b))?",
            Pattern.CASE_INSENSITIVE);

    private Circles() {}

    /** The same lines in parts of a turn. */
    static List<SheetLine> asTurns(List<SheetLine> lines) {
        return lines.stream().map(Circles::asTurn).toList();
    }

    private static SheetLine asTurn(SheetLine line) {
        if (!line.text().toLowerCase(Locale.ROOT).contains("circle")) {
            return line;
        }
        Matcher circle = CIRCLE.matcher(line.text());
        return circle.find() && mayBeWalked(line, circle.start())
                ? line.with(circle.start(), circle.end(), "making a " + size(circle) + " turn" + side(circle))
                : line;
    }

    /** Hips and heads go in circles as well. */
    private static boolean mayBeWalked(SheetLine line, int end) {
        return WALKED.matcher(line.text().substring(0, end)).find();
    }

    private static final Pattern WALKED = Pattern.compile("\\b(?:walk|run|step)[^;.]*$", Pattern.CASE_INSENSITIVE);

    private static String size(Matcher circle) {
        String size = circle.group("size") == null ? "" : circle.group("size").toLowerCase(Locale.ROOT);
        return switch (size) {
            case "", "full", "whole", "complete" -> "full";
            case "semi" -> "half";
            default -> size;
        };
    }

    private static String side(Matcher circle) {
        if (circle.group("side") != null) {
            return " " + circle.group("side");
        }
        boolean told = circle.group().toLowerCase(Locale.ROOT).endsWith("clockwise");
        return !told ? "" : circle.group("anti") == null ? " right" : " left";
    }
}
