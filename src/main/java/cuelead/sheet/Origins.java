package cuelead.sheet;

import cuelead.dance.Claims;
import cuelead.dance.ClockMark;
import cuelead.dance.Dance;
import cuelead.dance.Doubt;
import cuelead.dance.Ending;
import cuelead.dance.EndingClaim;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.WallClaim;
import cuelead.report.Problem;
import java.util.List;

/**
 * Where the lines that are read stand in the sheet as it was written: a count line that is read as one may have been
 * written on two lines, behind another on the same line, or with its counts at its end.
 */
final class Origins {
    private final List<LaidLine> lines;

    Origins(List<LaidLine> lines) {
        this.lines = List.copyOf(lines);
    }

    /** A place in the sheet, both from 1; column 0 = the whole line. */
    record Place(int line, int column) {}

    /** The place in the sheet of a place in the lines that are read. */
    Place of(int line, int column) {
        return line < 1 || line > lines.size()
                ? new Place(line, column)
                : lines.get(line - 1).origin(column);
    }

    /** Column of a problem behind a line, told at the last line that it was put together from. */
    static final int END = Integer.MAX_VALUE;

    private Place end(int line) {
        return new Place(of(line, END - 1).line(), 1);
    }

    int line(int line) {
        return of(line, 0).line();
    }

    private int line(Place read) {
        return of(read.line(), read.column()).line();
    }

    Problem of(Problem problem) {
        Place place = problem.column() == END ? end(problem.line()) : of(problem.line(), problem.column());
        return new Problem(
                problem.severity(),
                problem.kind(),
                problem.file(),
                place.line(),
                place.column(),
                problem.sentence(),
                problem.tryThis());
    }

    /** {@code header} knows where in its lines it states its claims. */
    Dance of(Dance dance, HeaderReader header) {
        return new Dance(
                dance.header(),
                dance.parts().stream().map(this::of).toList(),
                dance.sequence(),
                dance.tags().stream().map(this::of).toList(),
                dance.restarts().stream().map(this::of).toList(),
                dance.ending().map(this::of),
                of(dance.claims(), header));
    }

    private Part of(Part part) {
        return new Part(part.name(), part.sections().stream().map(this::of).toList());
    }

    private Section of(Section section) {
        return new Section(
                section.name(),
                section.heading(),
                section.length(),
                section.steps().stream().map(this::of).toList(),
                section.figures(),
                section.ownCalls(),
                line(section.line()));
    }

    private Step of(Step step) {
        Place place = of(step.line(), step.column());
        return step.writtenAt(place.line(), place.column());
    }

    private Tag of(Tag tag) {
        return new Tag(of(tag.part()), tag.afterWalls(), tag.afterCount(), tag.statedFacing(), line(tag.line()));
    }

    private Ending of(Ending ending) {
        return new Ending(
                ending.words(),
                ending.wall(),
                ending.afterCount(),
                ending.part().map(part -> of(inOneLine(part, ending.line()))),
                line(ending.line()));
    }

    /** Steps in the sentence that tells of the ending are told where it begins, though it goes on in the next line. */
    private static Part inOneLine(Part part, int sentence) {
        return new Part(
                part.name(),
                part.sections().stream()
                        .map(section -> new Section(
                                section.name(),
                                section.heading(),
                                section.length(),
                                section.steps().stream()
                                        .map(step -> step.line() == sentence ? step.writtenAt(sentence, 0) : step)
                                        .toList(),
                                section.figures(),
                                section.ownCalls(),
                                section.line()))
                        .toList());
    }

    private Restart of(Restart restart) {
        return new Restart(
                restart.wall(),
                restart.afterCount(),
                restart.statedFacing(),
                restart.changed().stream().map(this::of).toList(),
                line(restart.line()));
    }

    private Claims of(Claims claims, HeaderReader header) {
        return new Claims(
                claims.clockMarks().stream().map(this::of).toList(),
                claims.doubts().stream()
                        .map(doubt -> new Doubt(doubt.part(), doubt.from(), doubt.about(), line(doubt.line())))
                        .toList(),
                line(header.countsAt()),
                line(header.wallsAt()),
                line(header.weightAt()),
                claims.endings().stream().map(this::of).toList(),
                claims.walls().stream()
                        .map(claim -> new WallClaim(claim.wall(), claim.moment(), claim.stated(), line(claim.line())))
                        .toList(),
                claims.lengths().stream()
                        .map(claim -> new Claims.PartLength(claim.part(), claim.counts(), line(claim.line())))
                        .toList());
    }

    private EndingClaim of(EndingClaim claim) {
        return new EndingClaim(
                claim.stated(), claim.start(), claim.wall(), claim.afterCount(), claim.turn(), line(claim.line()));
    }

    private ClockMark of(ClockMark mark) {
        Place place = of(mark.line(), mark.column());
        return new ClockMark(mark.part(), mark.afterCounts(), mark.stated(), place.line(), place.column());
    }
}
