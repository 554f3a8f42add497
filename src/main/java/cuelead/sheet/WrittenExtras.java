package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Ending;
import cuelead.dance.Facing;
import cuelead.dance.Foot;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.WallClaim;
import cuelead.dance.WallWalk;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tags, restarts and the ending as they are written below the dance. */
final class WrittenExtras {
    private final Dance dance;
    private final WrittenSections sections;

    WrittenExtras(Dance dance, WrittenSections sections) {
        this.dance = dance;
        this.sections = sections;
    }

    List<String> tag(Tag tag) {
        String walls = tag.afterWalls().stream().map(String::valueOf).collect(Collectors.joining(" and "));
        String where = walls.isEmpty()
                ? ""
                : (tag.afterCount().isPresent() ? ", on" : ", at the end of")
                        + (tag.afterWalls().size() > 1 ? " walls " : " wall ")
                        + walls;
        String within = tag.afterCount().isPresent()
                ? " after section " + section(tag.afterCount().getAsInt())
                : "";
        String number =
                tag.part().name().substring(Math.min(3, tag.part().name().length()));
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(
                "TAG" + number + ": " + tag.part().counts() + " counts" + where + within + facing(tag.statedFacing()));
        sections.standOn(endWeight());
        lines.addAll(sections.ofExtra(tag.part(), Facing.FRONT));
        return lines;
    }

    private static String facing(Optional<Facing> stated) {
        return stated.map(facing -> ", facing " + facing.clock()).orElse("");
    }

    private Weight endWeight() {
        return WallWalk.steps(dance.parts().get(0)).stream()
                .reduce((first, second) -> second)
                .map(Step::weightAfter)
                .orElse(Weight.UNKNOWN);
    }

    /** Number of the section that ends with this count. */
    private int section(int count) {
        int number = 0;
        int before = 0;
        for (Section section : dance.parts().get(0).sections()) {
            number += before < count ? 1 : 0;
            before += section.length();
        }
        return number;
    }

    /** In a phrased dance the sequence tells of it. */
    List<String> restart(Restart restart) {
        return dance.isPhrased()
                ? List.of()
                : List.of(
                        "",
                        "Restart: on wall " + restart.wall() + besideWall(restart) + " after count "
                                + restart.afterCount() + facing(restart.statedFacing()) + changed(restart));
    }

    private String besideWall(Restart restart) {
        return dance.claims().walls().stream()
                .filter(claim -> claim.moment() == WallClaim.Moment.BEGINNING_OR_BREAK)
                .filter(claim -> claim.wall() == restart.wall() && claim.line() == restart.line())
                .map(claim -> " (" + claim.stated().clock() + ")")
                .findFirst()
                .orElse("");
    }

    private static String changed(Restart restart) {
        if (restart.changed().isEmpty()) {
            return "";
        }
        Step first = restart.changed().get(0);
        Footing before =
                new Footing(first.foot().map(Foot::other).map(Weight::on).orElse(Weight.UNKNOWN));
        List<String> phrases = new ArrayList<>();
        restart.changed().forEach(step -> phrases.add(StepWords.of(step, before)));
        String counts = WrittenCounts.labels(WrittenCounts.runs(restart.changed(), List.of()));
        return ", replace counts " + counts + " with " + String.join(", ", phrases);
    }

    /** Its words as they are; steps that stood below them stand below them again. */
    List<String> ending(Ending ending) {
        List<String> lines = new ArrayList<>(List.of("", ending.words()));
        ending.part().filter(part -> isBelow(part, ending)).ifPresent(part -> {
            sections.standOn(Weight.UNKNOWN);
            lines.addAll(sections.ofExtra(part, start(ending)));
        });
        return lines;
    }

    private static boolean isBelow(Part part, Ending ending) {
        return WallWalk.steps(part).stream().anyMatch(step -> step.line() != ending.line());
    }

    /** Where the dancers face when it begins, as far as the sheet says when that is. */
    private Facing start(Ending ending) {
        Part whole = dance.parts().get(0);
        return ending.wall().isPresent() && !dance.isPhrased()
                ? new WallWalk(dance).after(ending.wall().getAsInt(), ending.countsOf(whole))
                : Facing.FRONT;
    }
}
