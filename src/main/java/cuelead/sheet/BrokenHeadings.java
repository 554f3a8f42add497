package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Headings that were broken at the end of their line: "[1-8] SIDE, TOGETHER, SHUFFLE," above "ROCK, RECOVER". */
final class BrokenHeadings {
    private static final int MOST_LINES = 3;

    private BrokenHeadings() {}

    /** The same lines, each heading on one. */
    static List<SheetLine> joined(List<SheetLine> lines) {
        List<SheetLine> joined = new ArrayList<>();
        int i = 0;
        while (i < lines.size()) {
            int end = end(lines, i);
            SheetLine heading = lines.get(i);
            for (SheetLine more : lines.subList(i + 1, end)) {
                heading = together(heading, more);
            }
            joined.add(heading);
            i = end;
        }
        return joined;
    }

    /** Index behind the last line of the heading that begins here; the next one where it is no broken heading. */
    private static int end(List<SheetLine> lines, int start) {
        int end = start + 1;
        if (!mayBeHeading(lines.get(start))) {
            return end;
        }
        while (end < lines.size() && end - start < MOST_LINES && goesOn(lines, start, end)) {
            end++;
        }
        if (end == start + 1) {
            return end;
        }
        boolean counts = end < lines.size() && isCounted(lines.get(end));
        return counts && heads(lines.get(start), lines.get(end)) ? end : start + 1;
    }

    /** With words behind its counts or its number. */
    private static boolean mayBeHeading(SheetLine line) {
        if (line.isBlank() || OwnLines.isOwn(line)) {
            return false;
        }
        LineKind kind = LineKind.of(line);
        Optional<SectionHead> head = kind == LineKind.SECTION ? SectionHead.read(line.text()) : Optional.empty();
        return kind == LineKind.COUNTS
                || head.filter(found -> !found.heading().isBlank() && !found.opensPart())
                        .isPresent();
    }

    private static boolean goesOn(List<SheetLine> lines, int start, int index) {
        SheetLine line = lines.get(index);
        boolean words = !line.isBlank() && LineKind.of(line) == LineKind.OTHER && !isCounted(line);
        boolean open = Continuation.endsOpen(lines.get(index - 1).text()) || beginsOpen(line.text());
        return words && (open || (isCapital(lines.get(start).text()) && isCapital(line.text())));
    }

    /** "AND VINE LEFT", "& vine left", "with 1/4 turn" */
    private static boolean beginsOpen(String text) {
        return OPEN.matcher(text).find();
    }

    private static final Pattern OPEN = Pattern.compile("^\\s*(?:and|with|&|\\+|then)", Pattern.CASE_INSENSITIVE);

    private static boolean isCapital(String text) {
        return text.chars().anyMatch(Character::isUpperCase) && text.chars().noneMatch(Character::isLowerCase);
    }

    private static boolean isCounted(SheetLine line) {
        return !line.isBlank() && !line.counted(0).isEmpty();
    }

    /** A line that begins with counts heads what is counted within them. */
    private static boolean heads(SheetLine heading, SheetLine below) {
        Row row = Row.of(heading, 0, false);
        boolean ranged = row.isHeadingOf(Optional.of(Row.of(nextTo(heading, below), 0, false)));
        return ranged || (LineKind.of(heading) == LineKind.SECTION && !isBareRange(heading));
    }

    private static SheetLine nextTo(SheetLine heading, SheetLine below) {
        return new SheetLine(heading.number() + 1, below.text(), below.tried());
    }

    private static boolean isBareRange(SheetLine line) {
        return SectionHead.read(line.text()).filter(SectionHead::isBareRange).isPresent();
    }

    /** A word that was broken by a hyphen is put together again. */
    private static SheetLine together(SheetLine heading, SheetLine more) {
        String text = heading.text().stripTrailing();
        SheetLine both = heading.and(more);
        boolean broken =
                text.matches(".*\\p{L}-") && Character.isLetter(more.text().charAt(more.firstColumn() - 1));
        return broken ? both.with(text.length() - 1, text.length() + 1, "") : both;
    }
}
