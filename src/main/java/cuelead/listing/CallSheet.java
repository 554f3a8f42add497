package cuelead.listing;

import cuelead.dance.Dance;
import cuelead.dance.Ending;
import cuelead.dance.Facing;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is called, section by section in large print, below what becomes of the walls. */
final class CallSheet {
    private static final double TITLE_POINTS = 24;
    private static final double TEXT_POINTS = 14;
    private static final double HEAD_POINTS = 13;
    private static final double INDENT_POINTS = 14;

    private final Dance dance;
    private final RowMaker maker;
    private final CallRows calls;
    private final List<List<PrintedRow>> blocks = new ArrayList<>();

    private CallSheet(Dance dance, RowMaker maker, double wordPoints) {
        this.dance = dance;
        this.maker = maker;
        calls = new CallRows(maker, dance.header().metre() == Metre.SIXES ? 3 : 4, wordPoints);
        head();
        dance.parts().forEach(this::part);
        dance.tags().forEach(this::tag);
        dance.restarts().stream()
                .filter(restart -> !restart.changed().isEmpty())
                .forEach(this::restart);
        dance.ending().ifPresent(this::ending);
    }

    /**
     * On as few pages as it can be, in letters as large as there is room for with counts below each other.
     *
     * @param heightPoints of the text of a page
     */
    static List<List<PrintedRow>> of(Dance dance, RowMaker maker, double heightPoints) {
        CallSheet best = new CallSheet(dance, maker, CallRows.LEAST_POINTS);
        int pages = PrintedPages.of(best.blocks, heightPoints).size();
        int outOfColumns = best.calls.rowsOutOfColumns();
        for (int points = CallRows.LEAST_POINTS + 1; points <= CallRows.MOST_POINTS; points++) {
            CallSheet larger = new CallSheet(dance, maker, points);
            boolean isAsGood = PrintedPages.of(larger.blocks, heightPoints).size() <= pages
                    && larger.calls.rowsOutOfColumns() <= outOfColumns;
            if (!isAsGood) {
                return best.blocks;
            }
            best = larger;
        }
        return best.blocks;
    }

    private PrintedRow text(String words) {
        return maker.text(words, TEXT_POINTS, Letters.Face.PLAIN, INDENT_POINTS);
    }

    private PrintedRow title(String words) {
        return maker.text(words, HEAD_POINTS, Letters.Face.BOLD, INDENT_POINTS);
    }

    private void head() {
        List<PrintedRow> rows = new ArrayList<>();
        rows.add(maker.text(dance.header().title(), TITLE_POINTS, Letters.Face.BOLD, 0));
        rows.add(text(DanceFacts.of(dance) + "."));
        rows.add(text(walls()));
        dance.restarts().stream()
                .filter(restart -> restart.changed().isEmpty())
                .forEach(restart -> rows.add(text(WallChanges.told(restart))));
        dance.tags().forEach(tag -> rows.add(text(WallChanges.told(tag))));
        blocks.add(rows);
    }

    /** How the walls begin, or what comes after what. */
    private String walls() {
        if (dance.isPhrased()) {
            return "Danced: " + String.join(" ", dance.sequence()) + ".";
        }
        List<String> facings = new ArrayList<>();
        Facing facing = Facing.FRONT;
        do {
            facings.add(facing.clock());
            facing = facing.after(dance.parts().get(0).netTurn());
        } while (!facing.equals(Facing.FRONT));
        return facings.size() == 1
                ? "Every wall begins at 12:00."
                : "Walls begin at " + String.join(", ", facings) + ", and again.";
    }

    private void part(Part part) {
        Facing facing = Facing.FRONT;
        boolean isFirst = true;
        for (Section section : part.sections()) {
            Facing end = facing.after(section.netTurn());
            boolean isTurned =
                    section.steps().stream().anyMatch(step -> step.turn().degrees() != 0);
            String where = isTurned ? "  (" + end.clock() + ")" : "";
            List<PrintedRow> rows = new ArrayList<>();
            if (isFirst && dance.isPhrased()) {
                rows.add(maker.text("PART " + part.name(), TEXT_POINTS, Letters.Face.BOLD, INDENT_POINTS));
            }
            rows.add(title(ListedDance.title(section) + where));
            rows.addAll(calls.of(section));
            blocks.add(rows);
            facing = end;
            isFirst = false;
        }
    }

    private void tag(Tag tag) {
        extra(WallChanges.told(tag), tag.part().sections());
    }

    private void restart(Restart restart) {
        extra(WallChanges.told(restart), List.of(alone(restart.changed())));
    }

    private void ending(Ending ending) {
        extra(WallChanges.told(ending), ending.part().map(Part::sections).orElse(List.of()));
    }

    private static Section alone(List<Step> steps) {
        return new Section("", "", 0, steps, List.of(), List.of(), 0);
    }

    private void extra(String told, List<Section> sections) {
        List<PrintedRow> rows = new ArrayList<>(List.of(title(told)));
        sections.forEach(section -> rows.addAll(calls.of(section)));
        blocks.add(rows);
    }

    /** Whether anybody turns, or where that is not known. */
    static boolean turns(Dance dance) {
        Optional<Step> turning = dance.sections()
                .flatMap(section -> section.steps().stream())
                .filter(step -> step.turn().degrees() != 0)
                .findFirst();
        return turning.isPresent();
    }
}
