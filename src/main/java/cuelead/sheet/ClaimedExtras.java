package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.english.NumberWords;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Whether the sheet has as many tags and restarts as it says: "1 tag, 2 restarts", "No tags, no restarts!". */
final class ClaimedExtras {
    private static final Pattern CLAIM = Pattern.compile(
            "(?<![\\w:/.-])(no|zero|without|\\d|one|two|three|four|five)(?: (?:any|easy|short|little|simple|small))*"
                    + " (tags?|bridges?|restarts?)\\b(?! needed)"
                    + "(?:\\s*(?:,|&|/|and|or|nor)\\s*(no )?(tags?|bridges?|restarts?)\\b)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBERED = Pattern.compile(
            "\\b(tags|bridges|restarts)\\s*[:=]\\s*(\\d)(?![\\d.:]|st|nd|rd|th|\\s*(?:[,&+]|and)\\s*\\d|\\s*(?:counts?|cts?|beats?)\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern TAG_LENGTH = Pattern.compile(
            "\\btag\\s*[:(=-]?\\s*(\\d{1,2})[ -]?(?:counts?|cts?|beats?)\\b|\\b(\\d{1,2})[ -]counts? tag\\b(?!s)",
            Pattern.CASE_INSENSITIVE);
    private static final Set<String> NONE = Set.of("no", "zero", "without", "0");
    /** What is told of a tag or a restart where it could not be read whole. */
    private static final List<String> UNREAD =
            List.of("tag_unclear", "empty_tag", "restart_unclear", "restart_twice", "no_such_wall", "unread");

    private final Dance dance;
    private final Problems problems;
    /** Of what the number is wrong. */
    private final Set<String> wrong = new HashSet<>();

    private ClaimedExtras(Dance dance, Problems problems) {
        this.dance = dance;
        this.problems = problems;
    }

    /** {@code above}: lines above the dance; {@code all}: those of the whole sheet. */
    static void check(List<SheetLine> above, List<SheetLine> all, Dance dance, Problems problems) {
        if (UNREAD.stream().anyMatch(problems::has)) {
            return;
        }
        ClaimedExtras claims = new ClaimedExtras(dance, problems);
        all.stream().filter(line -> !line.isBlank()).forEach(line -> claims.line(line, above.contains(line)));
        if (!dance.isPhrased()) {
            new ClaimedWalls(dance, problems).check(above, claims.wrong);
        }
    }

    /** Of what a sheet says otherwise of its tags and restarts than it has them. */
    static final String KIND = "wrong_claim";

    private void line(SheetLine line, boolean header) {
        LineKind kind = LineKind.of(line);
        boolean danced = !header && (kind == LineKind.COUNTS || kind == LineKind.SECTION);
        if (!danced) {
            NoteClauses.notes(line).forEach(clause -> clause(clause, header));
        }
    }

    private void clause(SheetLine line, boolean header) {
        if (!header && line.namesWall()) {
            return;
        }
        if (header && !line.namesWall()) {
            numbered(line);
            tagLength(line);
        }
        Matcher claim = CLAIM.matcher(line.text());
        while (claim.find()) {
            String number = claim.group(1).toLowerCase(Locale.ROOT);
            boolean none = NONE.contains(number);
            int stated = none ? 0 : Character.isDigit(number.charAt(0)) ? number.charAt(0) - '0' : word(number);
            if (none || header) {
                claimed(stated, claim.group(2), line, claim.start());
            }
            if (claim.group(4) != null && (none || claim.group(3) != null)) {
                claimed(0, claim.group(4), line, claim.start(4));
            }
        }
    }

    /** "Restarts: 3", "Tags: 1"; what more numbers or ordinals follow tells of walls. */
    private void numbered(SheetLine line) {
        Matcher claim = NUMBERED.matcher(line.text());
        while (claim.find()) {
            claimed(Integer.parseInt(claim.group(2)), claim.group(1), line, claim.start());
        }
    }

    /** "Tag 8 counts", "8 count tag", where there is one. */
    private void tagLength(SheetLine line) {
        Matcher claim = TAG_LENGTH.matcher(line.text());
        if (dance.tags().size() != 1 || !claim.find()) {
            return;
        }
        int stated = Integer.parseInt(claim.group(1) == null ? claim.group(2) : claim.group(1));
        int written = dance.tags().get(0).part().counts();
        if (stated != written) {
            problems.error(
                    KIND,
                    line.number(),
                    claim.start() + 1,
                    "The sheet says here that the tag has " + stated + " counts, but " + written + " are written.",
                    "Check which is right.");
        }
    }

    private static int word(String number) {
        return NumberWords.value(number).orElse(0);
    }

    private void claimed(int stated, String what, SheetLine line, int from) {
        boolean restarts = what.toLowerCase(Locale.ROOT).startsWith("restart");
        Set<Integer> found = restarts ? restarts() : tags();
        boolean phrasedParts = restarts && dance.isPhrased();
        if (found.contains(stated) || phrasedParts) {
            return;
        }
        String one = restarts ? "restart" : "tag";
        wrong.add(one);
        int most = found.stream().max(Integer::compare).orElse(0);
        problems.error(
                KIND,
                line.number(),
                line.at(from).column(),
                "The sheet says " + number(stated, one) + " here, but "
                        + (most == 0 ? "none is told." : number(most, one) + (most == 1 ? " is told." : " are told.")),
                most == 0
                        ? "Say where it comes, such as \"" + (restarts ? "Restart" : "TAG")
                                + ": on wall 3 after count 8\"."
                        : "Check the number, or the " + one + "s.");
    }

    private static String number(int count, String one) {
        return (count == 0 ? "no" : String.valueOf(count)) + " " + one + (count == 1 ? "" : "s");
    }

    /** Tags are counted by their steps, by the walls on which they come, or by their lines. */
    private Set<Integer> tags() {
        int walls =
                dance.tags().stream().mapToInt(tag -> tag.afterWalls().size()).sum();
        long danced = dance.sequence().stream()
                .filter(name ->
                        dance.tags().stream().anyMatch(tag -> tag.part().name().equals(name)))
                .count();
        long lines = dance.tags().stream().map(Tag::line).distinct().count();
        return dance.tags().isEmpty() ? Set.of(0) : distinct(dance.tags().size(), walls, (int) danced, (int) lines);
    }

    private Set<Integer> restarts() {
        long counts =
                dance.restarts().stream().map(Restart::afterCount).distinct().count();
        long lines = dance.restarts().stream().map(Restart::line).distinct().count();
        return dance.restarts().isEmpty()
                ? Set.of(0)
                : distinct(dance.restarts().size(), (int) counts, (int) lines);
    }

    private static Set<Integer> distinct(Integer... numbers) {
        return List.of(numbers).stream().filter(number -> number > 0).collect(Collectors.toSet());
    }
}
