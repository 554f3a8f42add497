package cuelead.sheet;

import cuelead.dance.ClockMark;
import cuelead.dance.Count;
import cuelead.dance.FigureFinder;
import cuelead.dance.Figures;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the lines of the dance itself: sections and their counts, parts, tags, restarts, the sequence, the ending. */
final class BodyReader {
    private static final String ONLY_PART = "A";

    private final Problems problems;
    private final FigureFinder finder = new FigureFinder(Figures.standard());
    private final Map<String, List<Section>> parts = new LinkedHashMap<>();
    private final List<Tag> tags = new ArrayList<>();
    private final List<Restart> restarts = new ArrayList<>();
    private final List<ClockMark> marks = new ArrayList<>();
    private final List<String> sequence = new ArrayList<>();
    private Optional<String> ending = Optional.empty();
    private Optional<SectionDraft> section = Optional.empty();
    private Optional<TagHead> tag = Optional.empty();
    private String part = ONLY_PART;
    private final boolean waltz;
    private Weight weight;
    private int countLines;
    private int understoodLines;
    private int sequenceLine;
    private Place place = Place.DANCE;

    /** Which stretch of the sheet is being read. */
    private enum Place {
        DANCE,
        ENDING,
        AFTER
    }

    /** The head of a tag. */
    private record TagHead(String name, WallNote note, int line) {}

    BodyReader(Problems problems, Optional<Weight> startWeight, boolean waltz) {
        this.problems = problems;
        this.waltz = waltz;
        this.weight = startWeight.orElse(Weight.UNKNOWN);
    }

    /** Whether a line belongs to the dance, so that the header ends above it. */
    static boolean begins(SheetLine line) {
        return SectionHead.read(line.text()).isPresent()
                || CountGroup.read(line.text())
                        .filter(group -> group.counts().get(0).number() <= 1)
                        .isPresent();
    }

    void read(SheetLine line) {
        switch (LineKind.of(line)) {
            case TAG -> tag(line);
            case RESTART -> restart(line);
            case SEQUENCE -> sequence(line);
            case ENDING -> ending(line);
            case REPEAT -> repeat();
            case NOTE -> {
                // for the reader alone
            }
            case SECTION -> section(line);
            case COUNTS -> counts(line);
            case OTHER -> other(line);
        }
    }

    private void section(SheetLine line) {
        SectionHead head = SectionHead.read(line.text()).orElseThrow();
        closeSection();
        if (place != Place.DANCE || tag.isPresent()) {
            closeTag();
            place = Place.DANCE;
        }
        if (!head.part().isEmpty()) {
            part = head.part();
        }
        if (head.opensPart()) {
            parts.computeIfAbsent(part, name -> new ArrayList<>());
            return;
        }
        open(
                head.heading(),
                line.number(),
                head.hasRange() ? head.first() - 1 : 0,
                head.hasRange() ? head.length() : 0);
    }

    private void open(String heading, int line, int base, int length) {
        int number = parts.getOrDefault(part, List.of()).size() + 1;
        section = Optional.of(new SectionDraft(sectionName(number), heading, line, base, length));
    }

    private String sectionName(int number) {
        if (tag.isPresent()) {
            return tag.get().name();
        }
        return part + number;
    }

    private void counts(SheetLine line) {
        if (place == Place.ENDING) {
            return;
        }
        countLines++;
        CountGroup group = CountGroup.read(line.text()).orElseThrow();
        startsAnew(group);
        SectionDraft draft = section.orElseThrow();
        List<Count> counts = draft.local(group.counts(), countsSoFar());
        counts.stream().filter(draft::isBehind).findFirst().ifPresent(count -> behind(draft, group, line));
        draft.write(counts, line.number());
        LineReader reader = new LineReader(problems, weight);
        LineReader.Result result = reader.read(line, group, counts);
        weight = reader.weight();
        understoodLines += result.understood() ? 1 : 0;
        result.steps().forEach(draft::add);
        result.calls().forEach(draft::call);
        int before = tag.isPresent() ? 0 : countsSoFar();
        String name = tag.map(TagHead::name).orElse(part);
        result.marks().forEach(mark -> marks.add(LineReader.clockMark(name, before, mark, line.number())));
        result.restarts().forEach(count -> restartAt(before + count.number(), line));
    }

    /** Without headings, a line that counts from 1 again begins a new section; so does a line above all headings. */
    private void startsAnew(CountGroup group) {
        boolean fromOne =
                group.counts().get(0).isWhole() && group.counts().get(0).number() == 1;
        boolean again = section.filter(draft -> draft.length() >= 4 && draft.hasNoHead() && !draft.isEmpty())
                .isPresent();
        if (section.isEmpty() || (fromOne && again && tag.isEmpty())) {
            closeSection();
            open("", 0, 0, tag.map(head -> head.note().counts().orElse(0)).orElse(0));
        }
    }

    private void behind(SectionDraft draft, CountGroup group, SheetLine line) {
        problems.error(
                "count_order",
                line.number(),
                group.column(),
                "\"" + group.written(line.text()) + "\" comes again in " + draft.name() + ", or too late.",
                "Number the counts of a section upwards, or begin a new section above this line.");
    }

    private int countsSoFar() {
        return parts.getOrDefault(part, List.of()).stream()
                .mapToInt(Section::length)
                .sum();
    }

    private void closeSection() {
        section.filter(draft -> !draft.isEmpty()).ifPresent(draft -> {
            draft.check(problems);
            Section done = draft.section(finder, metre());
            if (tag.isPresent()) {
                addTag(tag.get(), done);
                tag = Optional.empty();
            } else {
                parts.computeIfAbsent(part, name -> new ArrayList<>()).add(done);
            }
        });
        section = Optional.empty();
    }

    private void tag(SheetLine line) {
        closeSection();
        closeTag();
        place = Place.DANCE;
        WallNote note = WallNote.read(line.tokens());
        String name = tags.isEmpty() ? "TAG" : "TAG" + (tags.size() + 1);
        if (note.number().isPresent() && note.number().getAsInt() > 1) {
            name = "TAG" + note.number().getAsInt();
        }
        tag = Optional.of(new TagHead(name, note, line.number()));
    }

    private void closeTag() {
        tag.ifPresent(head -> problems.error(
                "empty_tag",
                head.line(),
                1,
                "No counts are written below this tag.",
                "Write its count lines below it, such as \"1-4 Sway R, L, R, L\"."));
        tag = Optional.empty();
    }

    private void addTag(TagHead head, Section danced) {
        tags.add(new Tag(
                new Part(head.name(), List.of(danced)),
                head.note().walls(),
                head.note().facing(),
                head.line()));
    }

    private void restart(SheetLine line) {
        WallNote note = WallNote.read(line.tokens());
        int metre = metre().countsInSection();
        int here = countsSoFar() + section.map(SectionDraft::lastCount).orElse(0);
        int after = note.counts().isPresent()
                ? note.counts().getAsInt()
                : note.section().isPresent() ? note.section().getAsInt() * metre : place == Place.DANCE ? here : 0;
        if (note.walls().isEmpty() || after < 1) {
            problems.error(
                    "restart_unclear",
                    line.number(),
                    line.firstColumn(),
                    note.walls().isEmpty()
                            ? "It is not said on which wall to restart."
                            : "It is not said after which count to restart.",
                    "Write it like \"Restart: on wall 3 after count 16\".");
            return;
        }
        note.walls().forEach(wall -> addRestart(new Restart(wall, after, note.facing(), line.number())));
    }

    private void restartAt(int count, SheetLine line) {
        WallNote note = WallNote.read(line.tokens());
        note.walls().forEach(wall -> addRestart(new Restart(wall, count, Optional.empty(), line.number())));
    }

    /** A restart may be marked at its place and told again below: once is enough. */
    private void addRestart(Restart restart) {
        Optional<Restart> before = restarts.stream()
                .filter(other -> other.wall() == restart.wall() && other.afterCount() == restart.afterCount())
                .findFirst();
        if (before.isPresent() && restart.statedFacing().isPresent()) {
            restarts.remove(before.get());
            restarts.add(restart);
        } else if (before.isEmpty()) {
            restarts.add(restart);
        }
    }

    private void sequence(SheetLine line) {
        sequenceLine = line.number();
        List<Token> tokens = line.tokens();
        for (Token token : tokens.subList(1, tokens.size())) {
            if (token.is(Token.Kind.WORD) && !token.isWord("and") && !token.isWord("then")) {
                sequence.add(token.text().toUpperCase(Locale.ROOT));
            }
        }
    }

    private void ending(SheetLine line) {
        closeSection();
        closeTag();
        place = Place.ENDING;
        ending = Optional.of(line.text().strip());
    }

    private void repeat() {
        closeSection();
        closeTag();
        place = Place.AFTER;
    }

    private void other(SheetLine line) {
        if (place != Place.DANCE) {
            return;
        }
        problems.warning(
                "unread_line",
                line.number(),
                line.firstColumn(),
                "This line is not understood, so it is left out.",
                "Begin it with its counts (\"1-2 ...\"), or with \"Note:\" if it is no step.");
    }

    /** Closes what is open. */
    void finish() {
        closeSection();
        closeTag();
        for (String name : sequence) {
            boolean known = parts.containsKey(name)
                    || tags.stream().anyMatch(found -> found.part().name().equals(name));
            if (!known) {
                problems.error(
                        "unknown_part",
                        sequenceLine,
                        0,
                        "The sequence names \"" + name + "\", but the sheet has no such part or tag.",
                        "Its parts are " + String.join(", ", parts.keySet()) + ".");
            }
        }
        for (Tag found : tags) {
            if (found.afterWalls().isEmpty() && !sequence.contains(found.part().name())) {
                problems.error(
                        "tag_unclear",
                        found.line(),
                        0,
                        "It is not said at the end of which wall the tag comes.",
                        "Write it like \"TAG - 4 counts, at the end of wall 2\".");
            }
        }
    }

    boolean isDance() {
        return understoodLines > 0 && understoodLines * 3 >= countLines && !parts.isEmpty();
    }

    Metre metre() {
        int first = parts.values().stream()
                .flatMap(List::stream)
                .findFirst()
                .map(Section::length)
                .or(() -> section.map(SectionDraft::length))
                .orElse(8);
        return waltz || (first % 3 == 0 && first % 8 != 0) ? Metre.SIXES : Metre.EIGHTS;
    }

    /** Parts in the order in which they are first written. */
    List<Part> parts() {
        boolean phrased = parts.size() > 1 || !sequence.isEmpty();
        return parts.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> new Part(entry.getKey(), phrased ? entry.getValue() : numbered(entry.getValue())))
                .toList();
    }

    /** The sections of an ordinary dance are S1, S2 ... */
    private static List<Section> numbered(List<Section> sections) {
        List<Section> named = new ArrayList<>();
        for (Section found : sections) {
            named.add(new Section(
                    "S" + (named.size() + 1),
                    found.heading(),
                    found.length(),
                    found.steps(),
                    found.figures(),
                    found.ownCalls(),
                    found.line()));
        }
        return named;
    }

    Weight firstWeight() {
        for (Part found : parts()) {
            for (Section each : found.sections()) {
                for (Step step : each.steps()) {
                    if (step.foot().isPresent()) {
                        return Weight.on(step.foot().get().other());
                    }
                }
            }
        }
        return Weight.UNKNOWN;
    }

    List<Tag> tags() {
        return tags;
    }

    List<Restart> restarts() {
        return restarts;
    }

    List<ClockMark> marks() {
        return marks;
    }

    List<String> sequence() {
        return sequence;
    }

    Optional<String> ending() {
        return ending;
    }
}
