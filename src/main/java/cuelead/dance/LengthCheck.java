package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether the counts of a dance add up: each section to whole bars, all to the stated length, restarts within it. */
final class LengthCheck {
    /** With more, the header is likelier wrong than the sections. */
    private static final int MOST_CAUSES = 4;

    private final Dance dance;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    private LengthCheck(Dance dance, String file) {
        this.dance = dance;
        this.file = file;
    }

    static List<Problem> check(Dance dance, String file) {
        LengthCheck check = new LengthCheck(dance, file);
        boolean needsAll = MissingCounts.needsAll(dance);
        dance.parts().forEach(part -> check.bars(part.sections(), needsAll));
        if (needsAll) {
            check.shortSections();
        }
        if (!dance.isPhrased()) {
            check.total();
            dance.restarts().forEach(check::late);
        } else {
            dance.claims().lengths().forEach(check::part);
        }
        return check.problems;
    }

    /** A section may be a half one; one that ends within a bar is seldom meant. */
    private void bars(List<Section> sections, boolean shortAreTold) {
        for (int i = 0; i < sections.size(); i++) {
            if (!shortAreTold || MissingCounts.lacking(dance, i) == 0) {
                bars(
                        sections.get(i),
                        RunOver.countsInBars(sections, i, dance.header().metre()));
            }
        }
    }

    private void bars(Section section, int counts) {
        Metre metre = dance.header().metre();
        if (counts % metre.beatsInBar() != 0 && !section.steps().isEmpty()) {
            boolean tooFew = section.length() < metre.countsInSection();
            int line = section.steps().get(section.steps().size() - 1).line();
            problems.add(new Problem(
                    Severity.WARNING,
                    tooFew ? "missing_counts" : "extra_count",
                    file,
                    line,
                    0,
                    section.name() + " has " + section.length() + (section.length() == 1 ? " count" : " counts")
                            + ", but the dance is counted in " + (metre == Metre.EIGHTS ? "eights." : "sixes."),
                    "Check whether a count is missing, or one too many."));
        }
    }

    /** Half a section is danced now and then, but not where the stated length needs all of them whole. */
    private void shortSections() {
        int whole = dance.header().metre().countsInSection();
        List<Section> sections = dance.parts().get(0).sections();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (MissingCounts.lacking(dance, i) > 0) {
                problems.add(new Problem(
                        Severity.ERROR,
                        "missing_counts",
                        file,
                        section.steps().get(section.steps().size() - 1).line(),
                        0,
                        section.name() + " has " + section.length() + " counts; with " + whole
                                + " the dance would have the "
                                + dance.header().statedCounts().getAsInt()
                                + " that its header says.",
                        "Check whether a line is missing."));
            }
        }
    }

    /** A wrong total is told of itself, with what it comes from. */
    private void total() {
        if (dance.header().statedCounts().isEmpty()) {
            return;
        }
        int stated = dance.header().statedCounts().getAsInt();
        int written = dance.parts().stream().mapToInt(LengthCheck::written).sum();
        if (stated != written) {
            problems.add(new Problem(
                    Severity.ERROR,
                    "count_total",
                    file,
                    dance.claims().countsLine(),
                    0,
                    "The header says " + stated + " counts, but " + written + " are written.",
                    causes()));
        }
    }

    /** A count left out or too many is told as such where it stands. */
    private void part(Claims.PartLength claim) {
        Optional<Part> named = dance.parts().stream()
                .filter(part -> part.name().equals(claim.part()))
                .findFirst();
        int written = named.map(Part::counts).orElse(claim.counts());
        boolean bars = written % dance.header().metre().beatsInBar() == 0;
        if (written != claim.counts() && bars) {
            problems.add(new Problem(
                    Severity.ERROR,
                    "count_total",
                    file,
                    claim.line(),
                    0,
                    "Part " + claim.part() + " is said to have " + claim.counts() + " counts, but " + written
                            + " are written.",
                    "Check whether a section is missing or stands twice, or correct the length."));
        }
    }

    /** The sections that are not whole, else how long all of them are. */
    private String causes() {
        int whole = dance.header().metre().countsInSection();
        List<String> odd = new ArrayList<>();
        for (Section section : dance.parts().get(0).sections()) {
            int counts = written(section);
            if (counts != whole && !section.steps().isEmpty()) {
                odd.add(section.name() + " has " + counts);
            }
        }
        int sections = dance.parts().get(0).sections().size();
        if (odd.isEmpty() || odd.size() > MOST_CAUSES) {
            return "There " + (sections == 1 ? "is 1 section" : "are " + sections + " sections")
                    + "; check whether one is missing or stands twice, or correct the header.";
        }
        return "Look first where a section is not " + whole + " counts long: " + String.join(", ", odd) + ".";
    }

    private void late(Restart restart) {
        Part part = dance.parts().get(0);
        if (restart.afterCount() >= part.counts()) {
            problems.add(new Problem(
                    Severity.ERROR,
                    "restart_late",
                    file,
                    restart.line(),
                    0,
                    restart.afterCount() == part.counts()
                            ? "This restart comes after the last count, where the dance begins again anyway."
                            : "This restart comes after count " + restart.afterCount() + ", but the dance has only "
                                    + part.counts() + ".",
                    "Check the count."));
        }
    }

    /** Whole counts that some line has. */
    private static int written(Part part) {
        return part.sections().stream().mapToInt(LengthCheck::written).sum();
    }

    private static int written(Section section) {
        Set<Integer> numbers = new HashSet<>();
        section.steps().forEach(step -> numbers.add(step.count().number()));
        numbers.remove(0);
        return numbers.size();
    }
}
