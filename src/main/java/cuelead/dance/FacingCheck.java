package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the turns bring the dancers to where the sheet says: its clock marks, its walls, its restarts and tags. */
final class FacingCheck {
    private final Dance dance;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final WallWalk walls;
    private final KnownTurns turns;

    private FacingCheck(Dance dance, String file) {
        this.dance = dance;
        this.file = file;
        this.walls = new WallWalk(dance);
        this.turns = new KnownTurns(dance);
    }

    /** Lines in doubt that speak of no turn are believed to turn nobody, unless a turn that they hide explains more. */
    static List<Problem> check(Dance written, String file) {
        Dance dance = new MissingCounts(written).withRestartsAsWritten();
        List<Restart> told = written.restarts();
        HiddenTurn hidden = new HiddenTurn(dance);
        List<Problem> careful = straight(hidden.doubtingAll(), told, file);
        List<Problem> bold = straight(dance, told, file);
        boolean explained = bold.size() - careful.size() >= HiddenTurn.EXPLAINS
                && hidden.explains(
                        bold.size(), other -> straight(other, told, file).size());
        return new WrongTurn(dance, other -> straight(other, told, file)).alone(explained ? careful : bold);
    }

    private static List<Problem> straight(Dance written, List<Restart> told, String file) {
        ClockMarkCheck clocks = new ClockMarkCheck(written, file);
        List<Problem> wrongClocks = clocks.check();
        Dance dance = clocks.without(wrongClocks);
        FacingCheck check = new FacingCheck(dance, file);
        check.problems.addAll(wrongClocks);
        if (!dance.isPhrased()) {
            check.statedWalls();
            for (int i = 0; i < told.size(); i++) {
                check.restart(dance.restarts().get(i), told.get(i).afterCount());
            }
            dance.tags().forEach(check::tag);
            dance.claims().walls().forEach(check::wall);
        } else {
            check.alongSequence();
        }
        dance.claims().endings().forEach(check::ending);
        return check.problems;
    }

    private void statedWalls() {
        int stated = dance.header().statedWalls().orElse(0);
        Optional<Turn> known = turns.net(dance.parts().get(0));
        if (known.isEmpty()) {
            return;
        }
        int net = Math.floorMod(known.get().degrees(), 360);
        int real = known.get().walls();
        if (stated > 0 && stated != real) {
            error(
                    "wrong_walls",
                    dance.claims().wallsLine(),
                    "The header says " + walls(stated) + ", but the turns add up to " + degrees(net) + ", which makes "
                            + walls(real) + ".",
                    "Write " + walls(real) + ", or check the turns.");
        }
    }

    private static String walls(int number) {
        return number + (number == 1 ? " wall" : " walls");
    }

    private static String degrees(int net) {
        return switch (net) {
            case 0 -> "no turn";
            case 90 -> "a quarter turn right";
            case 180 -> "half a turn";
            case 270 -> "a quarter turn left";
            default -> net + " degrees right";
        };
    }

    /** {@code told}: its count as the sheet tells it. */
    private void restart(Restart restart, int told) {
        boolean late = restart.afterCount() >= dance.parts().get(0).counts();
        if (!late && walls.isKnown(restart.wall(), restart.afterCount())) {
            facing(
                    "restart_facing",
                    restart.line(),
                    restart.statedFacing().or(() -> besideWall(restart)),
                    walls.at(restart),
                    "After count " + told + " of wall " + restart.wall());
        }
    }

    /** What stands behind the number of its wall, unless that is where the wall begins. */
    private Optional<Facing> besideWall(Restart restart) {
        return dance.claims().walls().stream()
                .filter(claim -> claim.moment() == WallClaim.Moment.BEGINNING_OR_BREAK)
                .filter(claim -> claim.wall() == restart.wall() && claim.line() == restart.line())
                .map(WallClaim::stated)
                .filter(stated -> !stated.equals(walls.startOf(restart.wall())))
                .findFirst();
    }

    /** The facing that a tag claims, where the sequence first has it. */
    private void alongSequence() {
        List<Facing> facings = walls.alongSequence();
        for (Tag tag : dance.tags()) {
            int at = dance.sequence().indexOf(tag.part().name());
            boolean known =
                    dance.parts().stream().allMatch(part -> turns.net(part).isPresent());
            if (at >= 0 && known) {
                facing(
                        "tag_facing",
                        tag.line(),
                        tag.statedFacing(),
                        facings.get(at),
                        "Before the " + tag.part().name().toLowerCase(Locale.ROOT));
            }
        }
    }

    /** Where the sheet says that the dance ends. */
    private void ending(EndingClaim claim) {
        boolean known = dance.parts().stream().allMatch(part -> turns.net(part).isPresent());
        if (!known) {
            return;
        }
        Turn turn = claim.turn();
        if (claim.start().isPresent()) {
            Facing start = claim.start().get();
            int counts = claim.afterCount().orElse(0);
            Turn danced = dance.isPhrased() ? Turn.NONE : walls.turnTo(Math.min(counts, dance.counts()));
            facing(
                    "ending_facing",
                    claim.line(),
                    Optional.of(claim.stated()),
                    start.after(danced).after(turn),
                    "From " + start.clock()
                            + (counts > 0 ? " after count " + counts + with(turn) : " behind the last turn"));
        } else if (dance.isPhrased()) {
            List<Facing> facings = walls.alongSequence();
            facing(
                    "ending_facing",
                    claim.line(),
                    Optional.of(claim.stated()),
                    facings.get(facings.size() - 1).after(turn),
                    "At the end of the sequence" + with(turn));
        } else if (claim.wall().isPresent()) {
            int wall = claim.wall().getAsInt();
            int counts = claim.afterCount().orElse(dance.counts());
            facing(
                    "ending_facing",
                    claim.line(),
                    Optional.of(claim.stated()),
                    walls.after(wall, Math.min(counts, dance.counts())).after(turn),
                    "After count " + counts + " of wall " + wall + with(turn));
        }
    }

    private static String with(Turn turn) {
        return turn.degrees() == 0 ? "" : " with the " + turn.words();
    }

    private void wall(WallClaim claim) {
        if (claim.moment() == WallClaim.Moment.BEGINNING && walls.isKnown(claim.wall(), 0)) {
            boolean restarted = dance.restarts().stream().anyMatch(restart -> restart.line() == claim.line());
            facing(
                    restarted ? "restart_facing" : "wrong_clock",
                    claim.line(),
                    Optional.of(claim.stated()),
                    walls.startOf(claim.wall()),
                    "At the beginning of wall " + claim.wall());
        } else if (claim.moment() == WallClaim.Moment.END && walls.isKnown(claim.wall())) {
            facing(
                    "tag_facing",
                    claim.line(),
                    Optional.of(claim.stated()),
                    walls.beforeTags(claim.wall()),
                    "At the end of wall " + claim.wall());
        }
    }

    private void tag(Tag tag) {
        tag.afterWalls().stream()
                .limit(1)
                .filter(walls::isKnown)
                .forEach(wall -> facing(
                        "tag_facing",
                        tag.line(),
                        tag.statedFacing(),
                        walls.before(tag, wall),
                        tag.afterCount().isPresent()
                                ? "After count " + tag.afterCount().getAsInt() + " of wall " + wall
                                : "At the end of wall " + wall));
    }

    private void facing(String kind, int line, Optional<Facing> stated, Facing real, String where) {
        if (stated.isPresent() && !stated.get().equals(real)) {
            error(
                    kind,
                    line,
                    where + " the dancers face " + real.clock() + ", not "
                            + stated.get().clock() + ".",
                    "Write " + real.clock() + ", or check the wall and the count.");
        }
    }

    private void error(String kind, int line, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, kind, file, line, 0, sentence, tryThis));
    }
}
