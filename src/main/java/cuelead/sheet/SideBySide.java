package cuelead.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Two columns of a page beside each other: the right one is read below the left one, block by block. */
final class SideBySide implements Manner {
    private static final Pattern GAP = Pattern.compile("\\t\\s*|\\s{2,}");
    /** Lines of which the right side begins with counts or a heading. */
    private static final int FEWEST = 3;
    /** Characters by which pieces of one column may differ. */
    private static final int SLACK = 2;

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        int column = column(lines);
        if (column < 0) {
            return lines;
        }
        List<SheetLine> usual = new ArrayList<>();
        List<SheetLine> right = new ArrayList<>();
        boolean ended = false;
        for (SheetLine line : lines) {
            int cut = cut(line.text(), column);
            boolean whole = cut < 0 && line.text().length() > column + SLACK;
            if (whole || (ended && !line.isBlank() && LineKind.of(line) == LineKind.REPEAT)) {
                usual.addAll(right);
                right.clear();
            }
            ended = line.isBlank();
            usual.add(cut < 0 ? line : line.part(0, cut));
            if (cut >= 0) {
                right.add(line.part(cut, line.text().length()));
            } else if (ended && !right.isEmpty()) {
                right.add(line);
            }
        }
        usual.addAll(right);
        return usual;
    }

    /** 0-based index at which most right sides begin; -1 where there are none. */
    private static int column(List<SheetLine> lines) {
        Map<Integer, Integer> starts = new HashMap<>();
        for (SheetLine line : lines) {
            Matcher gap = GAP.matcher(line.text());
            while (gap.find()) {
                if (gap.start() > 0 && begins(line.text().substring(gap.end()))) {
                    starts.merge(gap.end(), 1, Integer::sum);
                }
            }
        }
        return starts.entrySet().stream()
                .filter(start -> start.getValue() >= FEWEST)
                .max(Map.Entry.<Integer, Integer>comparingByValue()
                        .thenComparing(
                                Map.Entry.<Integer, Integer>comparingByKey().reversed()))
                .map(Map.Entry::getKey)
                .orElse(-1);
    }

    private static boolean begins(String words) {
        return SectionHead.read(words).isPresent() || CountGroup.read(words).isPresent();
    }

    /** Where the right side of this line begins; -1 where it has none. */
    private static int cut(String text, int column) {
        Matcher gap = GAP.matcher(text);
        while (gap.find()) {
            if (Math.abs(gap.end() - column) <= SLACK && gap.end() < text.length()) {
                return gap.end();
            }
        }
        return -1;
    }
}
