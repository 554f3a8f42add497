package cuelead.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Leaves out what is printed at the top or the bottom of each page: page numbers, the title again, a club's line. */
final class RunningHeads {
    private static final int EDGE_ROWS = 2;
    private static final Pattern PAGE_NUMBER = Pattern.compile(
            "(?i)\\W*(page|seite|p\\.?)\\s*\\d+(\\s*(of|/|von)\\s*\\d+)?\\W*|\\W*\\d+\\s*(of|/)\\s*\\d+\\W*");
    private static final Pattern BARE_NUMBER = Pattern.compile("\\W*(\\d+)\\W*");
    /** A bare number this far from the text, in font sizes, is a page's; nearer it may be a count. */
    private static final double FAR = 2;

    private RunningHeads() {}

    /** The rows of each page; of a row that is on every page the first one stays, unless it is a foot. */
    static List<List<PageRow>> without(List<List<PageRow>> pages) {
        Set<String> heads = new HashSet<>();
        Set<String> feet = repeated(pages);
        List<List<PageRow>> bodies = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            List<PageRow> rows = pages.get(page);
            List<PageRow> body = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                boolean top = i < EDGE_ROWS;
                boolean bottom = i >= rows.size() - EDGE_ROWS;
                String key = key(rows.get(i));
                boolean isRunning = isPageNumber(rows, i, page + 1)
                        || (top && page > 0 && heads.contains(key))
                        || (bottom && i > 0 && feet.contains(key));
                if (!isRunning || !(top || bottom)) {
                    body.add(rows.get(i));
                }
            }
            rows.stream().limit(EDGE_ROWS).map(RunningHeads::key).forEach(heads::add);
            bodies.add(body);
        }
        return bodies;
    }

    /** Rows that stand at the bottom of at least two pages. */
    private static Set<String> repeated(List<List<PageRow>> pages) {
        Set<String> once = new HashSet<>();
        Set<String> repeated = new HashSet<>();
        for (List<PageRow> rows : pages) {
            rows.stream()
                    .skip(Math.max(1, rows.size() - EDGE_ROWS))
                    .map(RunningHeads::key)
                    .filter(key -> !once.add(key))
                    .forEach(repeated::add);
        }
        return repeated;
    }

    private static boolean isPageNumber(List<PageRow> rows, int at, int page) {
        String text = rows.get(at).text().strip();
        if (PAGE_NUMBER.matcher(text).matches()) {
            return true;
        }
        var bare = BARE_NUMBER.matcher(text);
        boolean edge = at == 0 || at == rows.size() - 1;
        return edge && rows.size() > 1 && bare.matches() && bare.group(1).equals("" + page) && distance(rows, at) > FAR;
    }

    private static double distance(List<PageRow> rows, int at) {
        PageRow next = rows.get(at == 0 ? 1 : at - 1);
        return Math.abs(rows.get(at).baseline() - next.baseline())
                / rows.get(at).size();
    }

    /** A row but for its numbers; count lines stay apart, since they may well end two pages. */
    private static String key(PageRow row) {
        String text = row.text().strip().toLowerCase(Locale.ROOT);
        return Cells.beginsWithCount(text) ? text : text.replaceAll("\\d+", "0");
    }
}
