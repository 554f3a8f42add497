package cuelead.document;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/** The text of a saved web page: what its reader sees of its main part, without menus and forms. */
final class WebPageText {
    private static final int HEAD_BYTES = 4096;
    private static final Pattern CHARSET = Pattern.compile("(?i)charset\\s*=\\s*[\"']?\\s*([\\w.:-]+)");
    private static final String UNSEEN =
            "script, style, noscript, template, nav, footer, aside, form, button, select, textarea, iframe, svg,"
                    + " object, audio, video, [hidden], [aria-hidden=true], [role=navigation], [role=search], [role=banner] nav";
    private static final Pattern HIDING = Pattern.compile("(?i).*(display\\s*:\\s*none|visibility\\s*:\\s*hidden).*");
    /** A main part with less of the text is none. */
    private static final double LEAST_SHARE = 0.3;

    private WebPageText() {}

    static List<String> lines(byte[] bytes) {
        return lines(decode(bytes));
    }

    static List<String> lines(String html) {
        Document page = Jsoup.parse(html);
        page.select(UNSEEN).remove();
        page.select("[style]").stream()
                .filter(element -> HIDING.matcher(element.attr("style")).matches())
                .toList()
                .forEach(Element::remove);
        List<String> lines = new WebLines().of(mainPart(page));
        return withoutRuns(lines);
    }

    /** The charset that the page names, unless its bytes say otherwise. */
    private static String decode(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD_BYTES), StandardCharsets.ISO_8859_1);
        Matcher named = CHARSET.matcher(head);
        return WebArchive.decode(bytes, named.find() ? named.group(1) : "utf-8");
    }

    private static Element mainPart(Document page) {
        return only(page.select("main, [role=main]"), page)
                .or(() -> only(page.select("article"), page))
                .orElse(page.body());
    }

    private static Optional<Element> only(Elements parts, Document page) {
        return parts.size() == 1
                        && parts.get(0).text().length()
                                > LEAST_SHARE * page.body().text().length()
                ? Optional.of(parts.get(0))
                : Optional.empty();
    }

    /** No more than one empty line between two others, none at the ends. */
    private static List<String> withoutRuns(List<String> lines) {
        List<String> kept = new ArrayList<>();
        for (String line : lines) {
            boolean afterBlank = kept.isEmpty() || kept.get(kept.size() - 1).isBlank();
            if (!line.isBlank() || !afterBlank) {
                kept.add(Breaks.plain(line));
            }
        }
        boolean endsBlank = !kept.isEmpty() && kept.get(kept.size() - 1).isBlank();
        return endsBlank ? kept.subList(0, kept.size() - 1) : kept;
    }
}
