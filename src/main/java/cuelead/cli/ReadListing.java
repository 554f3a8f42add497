package cuelead.cli;

import cuelead.dance.CountOne;
import cuelead.dance.Dance;
import cuelead.dance.DanceRow;
import cuelead.dance.EasyOption;
import cuelead.dance.Foot;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Weight;
import cuelead.listing.StepTold;
import cuelead.listing.WallChanges;
import cuelead.plan.CallWords;
import cuelead.steer.Told;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A dance as it was understood, count by count, to be held beside the sheet. */
final class ReadListing {
    private final Dance dance;
    private final PrintStream out;

    ReadListing(Dance dance, PrintStream out) {
        this.dance = dance;
        this.out = out;
    }

    void print() {
        out.println(dance.header().title());
        out.println(facts());
        Optional<Section> last = Optional.empty();
        for (DanceRow row : DanceRow.of(dance)) {
            if (last.filter(row.section()::equals).isEmpty()) {
                last.ifPresent(this::printOptions);
                begin(row.section());
                last = Optional.of(row.section());
            }
            out.println(line(row));
        }
        last.ifPresent(this::printOptions);
        printChanges();
    }

    private String facts() {
        StringBuilder facts = new StringBuilder(Told.number(dance.counts(), "count"));
        if (dance.isPhrased()) {
            facts.append(", danced ").append(String.join(" ", dance.sequence()));
        } else {
            facts.append(", ").append(Told.number(dance.parts().get(0).netTurn().walls(), "wall"));
        }
        facts.append(dance.header().metre() == Metre.SIXES ? ", waltz" : "");
        facts.append(start(dance.header().startWeight()));
        dance.header().countOne().map(ReadListing::countOne).ifPresent(facts::append);
        return facts.append('.').toString();
    }

    private static String start(Weight weight) {
        return switch (weight) {
            case LEFT -> ", begins with the right foot";
            case RIGHT -> ", begins with the left foot";
            case BOTH, UNKNOWN -> "";
        };
    }

    private static String countOne(CountOne where) {
        if (where instanceof CountOne.Intro intro) {
            return " after " + Told.number(intro.counts(), "count");
        }
        return ", count 1 at " + Told.minutes(((CountOne.AtSeconds) where).songSeconds());
    }

    private void begin(Section section) {
        out.println();
        out.println(section.heading().isBlank() ? section.name() : section.name() + "  " + section.heading());
        out.println(row("count", "foot", "what", "turn", "facing", "weight", "call", "figure"));
    }

    /** {@code easier, counts 5-6: walk R, L}. */
    private void printOptions(Section section) {
        dance.options().stream()
                .filter(option -> option.section().equals(section.name()))
                .map(option -> "  easier, " + (option.first() == option.last() ? "count " : "counts ") + option.counts()
                        + ": " + option.words() + why(option))
                .forEach(out::println);
    }

    private String why(EasyOption option) {
        if (dance.isDanced(option)) {
            return "";
        }
        return option.steps().isEmpty()
                ? "  (not understood as steps of these counts, so --easy does not call it)"
                : "  (ends on another foot or wall, so --easy does not call it)";
    }

    private static String line(DanceRow row) {
        Step step = row.step();
        return row(
                step.count().label(),
                step.foot().map(Foot::word).orElse(""),
                StepTold.what(step),
                step.turn().words(),
                row.facing().clock(),
                StepTold.weight(step.weightAfter()),
                CallWords.of(row.section(), step),
                CallWords.headAt(row.section(), step).orElse(""));
    }

    private static String row(String... cells) {
        return String.format(Locale.ROOT, "  %-5s %-6s %-22s %-7s %-7s %-7s %-12s %s", (Object[]) cells)
                .stripTrailing();
    }

    private void printChanges() {
        for (Restart restart : dance.restarts()) {
            out.println();
            out.println(WallChanges.told(restart));
            steps(new Section("", "", 0, restart.changed(), List.of(), List.of(), restart.line()));
        }
        for (Tag tag : dance.tags()) {
            out.println();
            out.println(WallChanges.told(tag));
        }
        dance.ending().ifPresent(ending -> {
            out.println();
            out.println(WallChanges.told(ending));
            ending.part().map(Part::sections).orElse(List.of()).forEach(this::steps);
        });
    }

    private void steps(Section section) {
        for (Step step : section.steps()) {
            out.println(row(
                    step.count().label(),
                    step.foot().map(Foot::word).orElse(""),
                    StepTold.what(step),
                    step.turn().words(),
                    "",
                    StepTold.weight(step.weightAfter()),
                    CallWords.of(section, step),
                    CallWords.headAt(section, step).orElse("")));
        }
    }
}
