package cuelead.sheet;

import java.util.Locale;
import java.util.regex.Pattern;

/** What a printed page leaves in a text that is copied from it: page numbers, addresses, the printer's foot line. */
final class PageCrumbs {
    private static final Pattern CRUMB = Pattern.compile(
            "(.{1,40}\\s)?(sheet|page|pg\\.?)\\s*\\d{1,3}\\s*(of|/)\\s*\\d{1,3}|(-\\s*)?(page|pg\\.?|p\\.)\\s*\\d{1,3}(\\s*(of|/)\\s*\\d{1,3})?(\\s*-)?"
                    + "|-\\s*\\d{1,3}\\s*-|\\d{1,2}\\s*/\\s*\\d{1,2}|\\d{1,2} of \\d{1,2}"
                    + "|(https?://|www\\.)\\S+|\\S+@\\S+\\.\\S+|[-_=*~.#\\s]+|\\(?(cont|continued|contd|over|next page)[.)]*");

    private PageCrumbs() {}

    static boolean isCrumb(SheetLine line) {
        String text = line.text().strip().toLowerCase(Locale.ROOT);
        return text.length() < 200
                && (CRUMB.matcher(text).matches()
                        || text.startsWith("printed ")
                        || text.startsWith("\u00a9")
                        || text.startsWith("(c) ")
                        || text.startsWith("copyright "));
    }
}
