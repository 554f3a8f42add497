package cuelead.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** The lines that a browser shows of an element: blocks, line breaks, list numbers, rows of tables. Used once. */
final class WebLines {
    private static final Set<String> SPACED =
            Set.of("p", "h1", "h2", "h3", "h4", "h5", "h6", "table", "ul", "ol", "pre");

    private final List<String> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();

    List<String> of(Element root) {
        inside(root);
        endLine();
        return lines;
    }

    private void inside(Element parent) {
        int number = parent.normalName().equals("ol") ? start(parent) : 0;
        for (Node child : parent.childNodes()) {
            if (child instanceof TextNode text) {
                add(text, parent);
            } else if (child instanceof Element element) {
                boolean isItem =
                        parent.normalName().equals("ol") && element.normalName().equals("li");
                element(element, isItem ? number++ : 0, parent);
            }
        }
    }

    private void element(Element element, int number, Element parent) {
        String name = element.normalName();
        if (name.equals("br")) {
            lines.add(line.toString().strip());
            line.setLength(0);
        } else if (name.equals("tr")) {
            endLine();
            row(element);
        } else if (element.isBlock() || name.equals("li")) {
            endLine();
            space(name);
            if (number > 0 && !ListNumber.hasOwn(element.text())) {
                line.append(ListNumber.written(number, parent.attr("type"))).append(". ");
            }
            inside(element);
            endLine();
            space(name);
        } else {
            inside(element);
        }
    }

    private void row(Element row) {
        List<List<String>> cells = row.children().stream()
                .filter(cell ->
                        cell.normalName().equals("td") || cell.normalName().equals("th"))
                .map(cell -> trimmed(new WebLines().of(cell)))
                .toList();
        lines.addAll(Cells.lines(cells));
    }

    private static List<String> trimmed(List<String> lines) {
        return lines.stream().filter(text -> !text.isBlank()).toList();
    }

    private void space(String name) {
        if (SPACED.contains(name) && !lines.isEmpty()) {
            lines.add("");
        }
    }

    private void add(TextNode text, Element parent) {
        boolean isPreformatted = parent.closest("pre") != null
                || parent.attr("style").replace(" ", "").contains("white-space:pre");
        if (isPreformatted) {
            String[] pieces = text.getWholeText().split("\\R", -1);
            for (int i = 0; i < pieces.length; i++) {
                line.append(pieces[i]);
                if (i < pieces.length - 1) {
                    lines.add(line.toString().stripTrailing());
                    line.setLength(0);
                }
            }
            return;
        }
        String flowing = text.getWholeText().replaceAll("[ \\t\\r\\n\\f]+", " ");
        boolean atSpace = line.isEmpty() || line.charAt(line.length() - 1) == ' ';
        line.append(atSpace && flowing.startsWith(" ") ? flowing.substring(1) : flowing);
    }

    private void endLine() {
        String text = line.toString().stripTrailing();
        if (!text.isBlank()) {
            lines.add(text);
        }
        line.setLength(0);
    }

    private static int start(Element list) {
        String start = list.attr("start");
        return start.matches("[1-9]\\d{0,3}") ? Integer.parseInt(start) : 1;
    }
}
