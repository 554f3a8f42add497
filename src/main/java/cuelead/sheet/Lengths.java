package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths instead of counts: "K step with claps (8)", "vine right and touch (4 counts), then ...", "8 counts: two jazz
 * boxes"; a line without one is as long as its figures are. Each gets the counts that it is danced on, from 1 in a
 * section with a heading, else from where the line above ends.
 */
final class Lengths implements Manner {
    private static final Pattern HEAD = Pattern.compile(
            "^\\W*?(?:(?:for|next|then|first|last|and)\\s+)*[(\\[]?(\\d{1,2})\\s*" + StatedLengths.UNIT
                    + "\\b[)\\]]?\\s*(?:of\\b|[-:.=,]|\\t|(?=[A-Za-z\\u00bc-\\u00be]))",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OPENING = Pattern.compile(
            "^\\W*(?:(?:start|begin)(?:ing)? (?:off )?(?:with|by|on)|then|next|and)\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern AT_END = Pattern.compile(
            "(?:[(\\[]\\s*(\\d{1,2})(?:\\s*" + StatedLengths.UNIT + ")?\\s*[)\\]]|[-=,] (\\d{1,2})\\s*"
                    + StatedLengths.UNIT + ")\\s*[.;]?\\s*$",
            Pattern.CASE_INSENSITIVE);

    /**
     * Whether a line tells at its end that it has another length than these counts. The last of them may stand there
     * instead, behind its step: "3-4 Step R to side (3), touch L (4)".
     */
    static boolean contradict(String text, List<Count> counts) {
        Matcher length = AT_END.matcher(text);
        if (!length.find()) {
            return false;
        }
        int told = Integer.parseInt(length.group(1) == null ? length.group(2) : length.group(1));
        long whole = counts.stream().filter(Count::isWhole).count();
        boolean last =
                length.group(1) != null && told == counts.get(counts.size() - 1).number();
        return told != whole && !last;
    }

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        Run run = new Run();
        for (SheetLine line : HeadedSteps.parted(lines)) {
            usual.add(run.counted(line, usual.isEmpty()));
        }
        return usual;
    }

    private static final class Run {
        private int last;
        private boolean begun;

        SheetLine counted(SheetLine said, boolean title) {
            if (said.isBlank() || title || OwnLines.isOwn(said)) {
                return said;
            }
            SheetLine line = said.isDanced() ? SpokenLengths.written(said) : said;
            LineKind kind = LineKind.of(line);
            if (kind == LineKind.SECTION || kind == LineKind.TAG) {
                last = SectionHead.read(line.text())
                        .map(head -> Math.max(0, head.first() - 1))
                        .orElse(0);
                return line;
            }
            boolean fact =
                    !begun && HeaderFacts.isFact(line) && !line.text().matches("^\\W*\\d.*") && !fillsItsLength(line);
            return fact || !DanceLine.isOfSteps(line) ? line : lengths(line);
        }

        /** "Vine right and touch - 4 counts": a length of steps and no fact about the dance. */
        private static boolean fillsItsLength(SheetLine line) {
            List<StatedLengths.Stated> places = StatedLengths.in(line.text());
            int from = line.text().indexOf(':') + 1;
            int fitting = 0;
            for (StatedLengths.Stated place : places) {
                String steps = from > place.from() ? "" : line.text().substring(from, place.from());
                String counted = "1-" + Math.max(2, place.counts()) + " "
                        + OPENING.matcher(steps).replaceFirst("");
                fitting += line.fit().fits(counted) ? 1 : 0;
                from = place.to();
            }
            return fitting * 2 > places.size();
        }

        private SheetLine lengths(SheetLine line) {
            Matcher head = HEAD.matcher(line.text());
            if (head.find() && StatedLengths.isLength(head.group(1))) {
                return line.with(0, head.end(), next(Integer.parseInt(head.group(1))) + " ");
            }
            List<StatedLengths.Stated> places = StatedLengths.in(line.text());
            if (places.isEmpty()) {
                return usualLength(line);
            }
            return StatedLengths.replaced(line, places, length -> " (" + next(length) + ") ");
        }

        /** As long as its figures usually are. */
        private SheetLine usualLength(SheetLine line) {
            int from = line.firstColumn() - 1;
            boolean counted = line.counted(last).stream()
                            .anyMatch(each -> each.group().counts().size() > 1)
                    || CountGroup.read(line.text()).isPresent()
                    || RepeatCall.read(line.text(), from).isPresent();
            List<Phrase> phrases = counted ? List.of() : line.fit().phrases(line.text(), from);
            if (!LineFit.areReadable(phrases)) {
                return line;
            }
            String counts = UsualCounts.of(phrases, last + 1);
            last += UsualCounts.length(phrases);
            begun = true;
            return line.with(from, from, counts + " ");
        }

        private String next(int length) {
            int first = last + 1;
            last += length;
            begun = true;
            return length == 1 ? String.valueOf(first) : first + "-" + last;
        }
    }
}
