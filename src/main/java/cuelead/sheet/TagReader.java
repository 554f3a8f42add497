package cuelead.sheet;

import cuelead.dance.Ending;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Tag;
import cuelead.dance.WallClaim;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/** Gathers the tags of a sheet: a head that names their walls, below it sections of their own. */
final class TagReader {
    private final Problems problems;
    private final List<Tag> tags = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();
    private final List<WallClaim> wallEnds = new ArrayList<>();
    /** Heads without steps below them. */
    private final List<Head> announced = new ArrayList<>();
    /** Lines of the heads behind whose steps the dance begins again. */
    private final Set<Integer> restarting = new HashSet<>();
    /** What the head of each tag says. */
    private final List<WallNote> notes = new ArrayList<>();

    private Optional<Head> open = Optional.empty();

    TagReader(Problems problems) {
        this.problems = problems;
    }

    /** The steps of the ending, which are written like those of a tag. */
    private Optional<Part> ending = Optional.empty();

    /**
     * {@code times}: how often it says that the tag is danced each time; {@code timesOn}: the same of walls of which
     * something else is said.
     */
    private record Head(
            String name, WallNote note, List<Integer> walls, int times, Map<Integer, Integer> timesOn, int line) {
        Head danced(int often) {
            return new Head(name, note, walls, often, timesOn, line);
        }

        Head danced(Map<Integer, Integer> onWalls) {
            Map<Integer, Integer> all = new TreeMap<>(timesOn);
            all.putAll(onWalls);
            return new Head(name, note, walls, times, all, line);
        }

        /** Walls by how often the tag is danced there, the usual number first. */
        Map<Integer, List<Integer>> wallsByTimes() {
            Map<Integer, List<Integer>> byTimes = new LinkedHashMap<>();
            Set<Integer> all = new LinkedHashSet<>(walls);
            all.addAll(timesOn.keySet());
            all.forEach(wall -> byTimes.computeIfAbsent(timesOn.getOrDefault(wall, times), each -> new ArrayList<>())
                    .add(wall));
            return byTimes.isEmpty() ? Map.of(times, List.of()) : byTimes;
        }

        boolean isEnding() {
            return name.equals(Ending.NAME);
        }
    }

    /** Begins the steps of the ending, if there are any; the tag before must be closed. */
    void openEnding(SheetLine line) {
        open = Optional.of(new Head(Ending.NAME, WallNote.read(List.of()), List.of(), 1, Map.of(), line.number()));
    }

    Optional<Part> ending() {
        return ending;
    }

    /** Begins a tag; the one before must be closed. */
    void open(SheetLine line) {
        WallNote note = WallNote.read(line.tokens());
        int number = note.number().orElse(1) > 1 ? note.number().getAsInt() : tags.size() + 1;
        List<Integer> walls = WallNumbers.checked(note.walls(), line, problems);
        int times = TagTimes.in(line.text());
        Map<Integer, Integer> timesOn = TimesOnWalls.in(line.text());
        boolean each = timesOn.isEmpty() && !walls.isEmpty() && walls.size() != times;
        open = Optional.of(new Head(name(number), note, walls, each ? times : 1, timesOn, line.number()));
        restartsBehind(line);
    }

    private static String name(int number) {
        return number == 1 ? "TAG" : "TAG" + number;
    }

    boolean isOpen() {
        return open.isPresent();
    }

    /** Of the open tag. */
    Optional<String> name() {
        return open.map(Head::name);
    }

    /** Length in counts that the head states for its one section; 0 where it states none. */
    int statedCounts() {
        return open.map(head -> head.note().length()).orElse(0);
    }

    /** Whether a line below the steps of the open tag says that they are danced more than once. */
    boolean repeats(SheetLine line, int lastCount) {
        if (!isOpen() || counts() + lastCount == 0) {
            return false;
        }
        int times = TagTimes.below(line);
        Map<Integer, Integer> timesOn = TimesOnWalls.below(line);
        open = open.map(head -> times > 1 ? head.danced(times) : head.danced(timesOn));
        return times > 1 || !timesOn.isEmpty();
    }

    /** Closed sections of the open tag. */
    List<Section> sections() {
        return List.copyOf(sections);
    }

    boolean hasSections() {
        return !sections.isEmpty();
    }

    /** Counts written in the open tag so far. */
    int counts() {
        return sections.stream().mapToInt(Section::length).sum();
    }

    void add(Section section) {
        sections.add(section);
    }

    /** Brackets below the head of a tag count from 1; the dance's own next section is none of the tag's. */
    boolean takes(SectionHead head, int danceCounts) {
        boolean runsOn = head.hasRange() && head.part().isEmpty() && head.first() == counts() + 1;
        boolean dancesOn = hasSections() && head.first() == danceCounts + 1;
        return isOpen() && runsOn && !dancesOn;
    }

    /** Whether a line tells that the dance begins again behind the open tag: "Then restart the dance". */
    void restartsBehind(SheetLine line) {
        open.filter(head -> line.number() == head.line() || !line.namesWall())
                .filter(head -> saysRestart(line))
                .ifPresent(head -> restarting.add(head.line()));
    }

    private static boolean saysRestart(SheetLine line) {
        return line.tokens().stream()
                .anyMatch(token -> token.is(Token.Kind.WORD) && token.text().startsWith("restart"));
    }

    /** Where a wall is broken off by a tag behind which the dance begins again; to be asked when the tags have their place. */
    List<Restart> restarts() {
        return tags.stream()
                .filter(tag -> tag.afterCount().isPresent() && restarting.contains(tag.line()))
                .flatMap(tag -> tag.afterWalls().stream()
                        .map(wall -> new Restart(wall, tag.afterCount().getAsInt(), Optional.empty(), tag.line())))
                .toList();
    }

    /** Ends the open tag, if there is one. */
    void close() {
        open.ifPresent(this::close);
        sections.clear();
        open = Optional.empty();
    }

    private void close(Head head) {
        if (head.isEnding()) {
            ending = sections.isEmpty() ? ending : Optional.of(new Part(head.name(), sections));
            return;
        }
        if (sections.isEmpty()) {
            announced.add(head);
            return;
        }
        List<WallClaim> claims = head.note().wallEnds(head.line());
        wallEnds.addAll(claims);
        Optional<Facing> stated = claims.isEmpty() ? head.note().facing() : Optional.empty();
        head.wallsByTimes().forEach((times, walls) -> {
            List<Section> danced = TagTimes.danced(sections, times, head.note().length());
            String name = names().contains(head.name()) ? name(tags.size() + 1) : head.name();
            tags.add(new Tag(new Part(name, danced), walls, stated, head.line()));
            notes.add(head.note());
        });
    }

    /** A line above the dance that tells after which walls a tag comes. */
    void headerNote(SheetLine line, WallNote note) {
        List<Integer> walls = WallNumbers.checked(note.walls(), line, problems);
        for (int i = 0; i < tags.size() && !walls.isEmpty(); i++) {
            Tag tag = tags.get(i);
            boolean named = note.number().isEmpty()
                    || tag.part().name().equals(name(note.number().getAsInt()));
            if (named && tag.afterWalls().isEmpty()) {
                tags.set(i, new Tag(tag.part(), walls, tag.statedFacing(), tag.line()));
                boolean told = tag.statedFacing().isPresent();
                note.facing()
                        .filter(facing -> !told)
                        .ifPresent(facing ->
                                wallEnds.add(new WallClaim(walls.get(0), WallClaim.Moment.END, facing, line.number())));
            }
        }
    }

    /** Tags that come within a wall get their place; {@code starts} = counts before section 1, 2, 3 ... */
    void place(List<Integer> starts) {
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            WallNote note = notes.get(i);
            OptionalInt place = note.placeOfTag(starts);
            boolean within = place.orElse(0) > 0 && place.getAsInt() < starts.get(starts.size() - 1);
            if (within && !tag.afterWalls().isEmpty()) {
                tags.set(i, new Tag(tag.part(), tag.afterWalls(), place, tag.statedFacing(), tag.line()));
            }
        }
    }

    List<WallClaim> wallEnds() {
        return wallEnds;
    }

    /** Reports tags without steps, and those that neither their head nor the sequence gives a place. */
    void finish(List<String> sequence) {
        announced.stream().filter(head -> !isWrittenBelow(head)).forEach(this::empty);
        for (Tag tag : tags) {
            boolean placed =
                    !tag.afterWalls().isEmpty() || sequence.contains(tag.part().name()) || problems.has("no_such_wall");
            if (!placed) {
                problems.error(
                        "tag_unclear",
                        tag.line(),
                        1,
                        "It is not said at the end of which wall the tag comes.",
                        "Write it like \"TAG - 4 counts, at the end of wall 2\".");
            }
        }
    }

    /** "Tag: 4 counts" above the dance only says how long the tag is whose steps stand below it. */
    private boolean isWrittenBelow(Head head) {
        return head.walls().isEmpty()
                && tags.stream().anyMatch(tag -> tag.part().name().equals(head.name()) && tag.line() > head.line());
    }

    private void empty(Head head) {
        problems.error(
                "empty_tag",
                head.line(),
                1,
                "No counts are written below this tag.",
                "Write its count lines below it, such as \"1-4 Sway R, L, R, L\".");
    }

    List<String> names() {
        return tags.stream().map(tag -> tag.part().name()).toList();
    }

    List<Tag> tags() {
        return tags;
    }
}
