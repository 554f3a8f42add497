package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Direction;
import cuelead.dance.Ending;
import cuelead.dance.Facing;
import cuelead.dance.Foot;
import cuelead.dance.Header;
import cuelead.dance.Metre;
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
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes a dance as a step sheet in one clean style: facts first, a bracket and a heading for each section, two counts a
 * line with every foot named. What is written reads back to the same dance.
 */
public final class SheetWriter {
    private final StringBuilder text = new StringBuilder();
    private final Dance dance;
    private final SheetNotes notes;
    private Footing footing;

    private SheetWriter(Dance dance, SheetNotes notes) {
        this.dance = dance;
        this.notes = notes;
        this.footing = new Footing(dance.header().startWeight());
    }

    /** Without what its sheet says beside it. */
    public static String write(Dance dance) {
        return write(dance, SheetNotes.NONE);
    }

    /** With credits behind the facts, and notes below the dance. */
    public static String write(Dance dance, SheetNotes notes) {
        SheetWriter writer = new SheetWriter(dance, notes);
        writer.header(dance.header());
        dance.parts().forEach(writer::part);
        if (!dance.isPhrased()) {
            writer.line("");
            writer.line("REPEAT");
        }
        dance.tags().forEach(writer::tag);
        dance.restarts().forEach(writer::restart);
        dance.ending().ifPresent(writer::ending);
        writer.notes();
        return writer.text.toString();
    }

    private void notes() {
        if (!notes.notes().isEmpty()) {
            line("");
        }
        notes.notes().forEach(note -> line(NoteLines.written(note)));
    }

    private void line(String words) {
        text.append(words.stripTrailing()).append('\n');
    }

    private void header(Header header) {
        line(header.title().isEmpty() ? "UNTITLED" : header.title());
        header.statedCounts().ifPresent(counts -> line("Count: " + counts));
        header.statedWalls().ifPresent(walls -> line("Wall: " + walls));
        if (!header.level().isEmpty()) {
            line("Level: " + header.level());
        }
        if (header.metre() == Metre.SIXES) {
            line("Waltz");
        }
        header.statedTempo().ifPresent(tempo -> line(Math.round(tempo) + " bpm"));
        if (!header.song().isEmpty()) {
            line("Song: " + header.song());
        }
        header.countOne().ifPresent(this::countOne);
        header.leadBeats().ifPresent(beats -> line("Lead: " + beats));
        if (header.countRate() != CountRate.ONE) {
            line("Counts a beat: " + header.countRate().label());
        }
        if (header.startWeight() == Weight.LEFT || header.startWeight() == Weight.RIGHT) {
            line("Start with weight on " + (header.startWeight() == Weight.LEFT ? "left" : "right"));
        }
        notes.credits().forEach(this::line);
        if (dance.isPhrased() && !dance.sequence().isEmpty()) {
            line("Sequence: " + sequence());
        }
    }

    /** "A, B, A16": a part that is broken off with the counts that are danced of it. */
    private String sequence() {
        List<String> names = new ArrayList<>();
        int run = 0;
        for (String name : dance.sequence()) {
            boolean part = dance.parts().stream().anyMatch(each -> each.name().equals(name));
            run += part ? 1 : 0;
            int wall = run;
            String cut = dance.restarts().stream()
                    .filter(restart -> part && restart.wall() == wall)
                    .findFirst()
                    .map(restart -> String.valueOf(restart.afterCount()))
                    .orElse("");
            names.add(name + cut);
        }
        return String.join(", ", names);
    }

    private void countOne(CountOne where) {
        if (where instanceof CountOne.Intro intro) {
            line("Intro: " + intro.counts() + " counts");
        } else if (where instanceof CountOne.AtSeconds at) {
            line(String.format(Locale.ROOT, "Count 1: %.3f", at.songSeconds()));
        }
    }

    private void part(Part part) {
        if (dance.isPhrased()) {
            line("");
            line("PART " + part.name());
        }
        sections(part, dance.isPhrased() ? part.name() : "", Facing.FRONT);
    }

    private void sections(Part part, String letter, Facing start) {
        Facing facing = start;
        int before = 0;
        for (Section section : part.sections()) {
            line("");
            line(letter + "[" + (before + 1) + "-" + (before + section.length()) + "] " + section.heading());
            facing = facing.after(section.netTurn());
            boolean turned =
                    section.steps().stream().anyMatch(step -> !step.turn().isNone());
            steps(section, turned ? " (" + facing.clock() + ")" : "");
            before += section.length();
        }
    }

    private void steps(Section section, String clock) {
        List<List<Step>> lines = lines(section.steps());
        for (List<Step> line : lines) {
            List<String> phrases = new ArrayList<>();
            for (int i = 0; i < line.size(); i++) {
                int end = continued(line, i);
                String length = end > i + 1 ? " (" + (end - i) + " counts)" : "";
                phrases.add(StepWords.of(line.get(i), footing) + length);
                line.subList(i + 1, end).forEach(step -> footing.take(Move.of(step, 0), Footing.Naming.NAMED));
                i = end - 1;
            }
            boolean last = line.equals(lines.get(lines.size() - 1));
            line(labels(line) + "  " + String.join(", ", phrases) + (last ? clock : "") + calls(section, line));
        }
        dance.options().stream()
                .filter(option -> option.section().equals(section.name()))
                .forEach(option -> line("(Easy option for counts " + option.counts() + ": " + option.words() + ")"));
    }

    /** Index behind the steps that go on from this one. */
    private static int continued(List<Step> line, int from) {
        int end = from + 1;
        while (end < line.size() && line.get(end).direction() == Direction.CONT) {
            end++;
        }
        return end;
    }

    /** Two whole counts a line, three in a waltz, with what lies between them and before them. */
    private List<List<Step>> lines(List<Step> steps) {
        List<List<Step>> lines = new ArrayList<>();
        for (Step step : steps) {
            boolean fresh = lines.isEmpty();
            if (!fresh) {
                List<Step> open = lines.get(lines.size() - 1);
                Count last = open.get(open.size() - 1).count();
                boolean follows = step.count().number() - last.number() <= 1;
                boolean room = step.count().number() <= lastOf(open);
                boolean pickup = open.stream().noneMatch(each -> each.count().isWhole());
                boolean goesOn = step.direction() == Direction.CONT;
                fresh = !(pickup || goesOn || (follows && room));
            }
            if (fresh) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(step);
        }
        return lines;
    }

    private int lastOf(List<Step> line) {
        int size = dance.header().metre() == Metre.SIXES ? 3 : 2;
        int first = Math.max(1, line.get(0).count().number());
        return (first + size - 1) / size * size;
    }

    /** "1-2", "3&4", "&5-6", "1a2". */
    private static String labels(List<Step> line) {
        StringBuilder labels = new StringBuilder();
        for (Step step : line) {
            Count count = step.count();
            boolean leads = labels.isEmpty() && !count.isWhole() && count.number() > 0 && hasNext(line);
            if (count.isWhole() || (labels.isEmpty() && !leads && count.number() > 0)) {
                boolean joined = !labels.isEmpty() && Character.isDigit(labels.charAt(labels.length() - 1));
                labels.append(joined ? "-" : "").append(count.number());
            }
            labels.append(count.split().mark());
        }
        return labels.toString();
    }

    private static boolean hasNext(List<Step> line) {
        return line.size() > 1;
    }

    private static String calls(Section section, List<Step> line) {
        List<String> calls = new ArrayList<>();
        for (Step step : line) {
            section.ownCalls().stream()
                    .filter(call -> call.count().equals(step.count()))
                    .findFirst()
                    .ifPresent(call -> calls.add(call.isSilence() ? "-" : call.words()));
        }
        return calls.isEmpty() ? "" : "  \"" + String.join(", ", calls) + "\"";
    }

    private void tag(Tag tag) {
        String walls = tag.afterWalls().stream().map(String::valueOf).collect(Collectors.joining(" and "));
        String where = walls.isEmpty()
                ? ""
                : (tag.afterCount().isPresent() ? ", on" : ", at the end of")
                        + (tag.afterWalls().size() > 1 ? " walls " : " wall ")
                        + walls;
        String within = tag.afterCount().isPresent()
                ? " after section " + section(tag.afterCount().getAsInt())
                : "";
        String facing =
                tag.statedFacing().map(stated -> ", facing " + stated.clock()).orElse("");
        line("");
        line("TAG" + tag.part().name().substring(Math.min(3, tag.part().name().length())) + ": "
                + tag.part().counts() + " counts" + where + within + facing);
        footing = new Footing(endWeight());
        sections(tag.part(), "", Facing.FRONT);
    }

    /** Its words as they are; steps that stood below them stand below them again. */
    private void ending(Ending ending) {
        line("");
        line(ending.words());
        boolean isBelow = ending.part().stream()
                .flatMap(part -> part.sections().stream())
                .flatMap(section -> section.steps().stream())
                .anyMatch(step -> step.line() != ending.line());
        if (isBelow) {
            Part whole = dance.parts().get(0);
            Facing start = ending.wall().isPresent() && !dance.isPhrased()
                    ? new WallWalk(dance).after(ending.wall().getAsInt(), ending.countsOf(whole))
                    : Facing.FRONT;
            footing = new Footing(Weight.UNKNOWN);
            sections(ending.part().orElseThrow(), "", start);
        }
    }

    private Weight endWeight() {
        return dance.parts().get(0).sections().stream()
                .flatMap(section -> section.steps().stream())
                .reduce((first, second) -> second)
                .map(Step::weightAfter)
                .orElse(Weight.UNKNOWN);
    }

    /** Number of the section that ends with this count. */
    private int section(int count) {
        int number = 0;
        int before = 0;
        for (Section section : dance.parts().get(0).sections()) {
            if (before < count) {
                number++;
            }
            before += section.length();
        }
        return number;
    }

    private void restart(Restart restart) {
        if (dance.isPhrased()) {
            return;
        }
        String facing = restart.statedFacing()
                .map(stated -> ", facing " + stated.clock())
                .orElse("");
        line("");
        line("Restart: on wall " + restart.wall() + besideWall(restart) + " after count " + restart.afterCount()
                + facing + changed(restart));
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
        String counts = first.count().number() + (restart.changed().size() > 1 ? "-" + restart.afterCount() : "");
        return ", replace counts " + counts + " with " + String.join(", ", phrases);
    }
}
