package cuelead.compose;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a score; its form is described in {@code demo-songs/README.md}. Goes on after a mistake at the next line,
 * so that all of them are told at once.
 */
final class ScoreReader {
    /**
     * What was read.
     *
     * @param score    empty when there are problems
     * @param problems all mistakes, in the order of the blocks
     */
    record Reading(Optional<Score> score, List<Problem> problems) {
        Reading {
            problems = List.copyOf(problems);
        }
    }

    /** A line {@code key: value}. */
    record Entry(Word key, List<Word> value) {
        /** The words of the value as one text. */
        String text() {
            return String.join(" ", value.stream().map(Word::text).toList());
        }

        /** Where to point when the value is wrong. */
        Word place() {
            return value.isEmpty() ? key : value.get(0);
        }
    }

    /** A bracketed heading with the lines under it; the lines before any heading have an empty kind. */
    private record Block(Word heading, String kind, String name, List<Entry> entries) {}

    private static final Pattern COMMENT = Pattern.compile("(^|\\s)#.*$");
    private static final Pattern HEADING = Pattern.compile("\\s*\\[(\\w+)(?:\\s+([\\w-]+))?]\\s*");
    private static final Pattern ENTRY = Pattern.compile("\\s*([\\w-]+):(.*)");
    private static final List<String> KINDS = List.of("band", "drums", "passage", "form");

    private final Complaints complaints;
    private final Map<String, Player> band = new LinkedHashMap<>();
    private final Map<String, DrumPattern> patterns = new LinkedHashMap<>();
    private final Map<String, Passage> passages = new LinkedHashMap<>();
    private final List<FormLine> form = new ArrayList<>();

    private ScoreReader(Complaints complaints) {
        this.complaints = complaints;
    }

    /**
     * Reads a whole score.
     *
     * @param file its name as the user gave it, for the problems
     * @param name its name without folder and ending
     */
    static Reading read(String file, String name, String text) {
        ScoreReader reader = new ScoreReader(new Complaints(file));
        List<Block> blocks = reader.blocks(text);
        Score.Header header =
                new HeaderReader(reader.complaints).read(blocks.get(0).entries());
        blocks.stream().skip(1).forEach(block -> reader.readBlock(block, header));
        if (reader.form.isEmpty()) {
            reader.complaints.atFile("no_form", "The score plays nothing.", "Add a [form] with a line a passage.");
        }
        List<Problem> problems = reader.complaints.problems();
        Optional<Score> score = problems.isEmpty()
                ? Optional.of(new Score(name, header, List.copyOf(reader.band.values()), reader.form))
                : Optional.empty();
        return new Reading(score, problems);
    }

    private List<Block> blocks(String text) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block(new Word("", 1, 1), "", "", new ArrayList<>()));
        int number = 0;
        for (String raw : text.lines().toList()) {
            number++;
            String line = COMMENT.matcher(raw).replaceAll("");
            if (line.isBlank()) {
                continue;
            }
            Matcher heading = HEADING.matcher(line);
            if (heading.matches()) {
                blocks.add(block(heading, number));
            } else {
                readEntry(line, number, blocks.get(blocks.size() - 1));
            }
        }
        return blocks;
    }

    private Block block(Matcher heading, int line) {
        Word word = new Word(heading.group(1), line, heading.start(1) + 1);
        String name = heading.group(2) == null ? "" : heading.group(2);
        if (!KINDS.contains(word.text())) {
            complaints.unknown(word, "block", KINDS);
        }
        return new Block(word, word.text(), name, new ArrayList<>());
    }

    private void readEntry(String line, int number, Block block) {
        Matcher matcher = ENTRY.matcher(line);
        if (!matcher.matches()) {
            Word first = Word.of(line, number, 1).get(0);
            complaints.at(
                    first,
                    "not_a_line",
                    "This line is neither \"[block]\" nor \"key: value\".",
                    "Put a colon after its first word.");
            return;
        }
        Word key = new Word(matcher.group(1), number, matcher.start(1) + 1);
        block.entries().add(new Entry(key, Word.of(line, number, matcher.start(2) + 1)));
    }

    private void readBlock(Block block, Score.Header header) {
        switch (block.kind()) {
            case "band" -> new BandReader(complaints).read(block.entries(), band);
            case "drums" ->
                new DrumReader(complaints, header.beatsPerBar())
                        .read(nameOf(block), block.entries())
                        .ifPresent(pattern -> patterns.put(pattern.name(), pattern));
            case "passage" ->
                new PassageReader(complaints, header)
                        .read(nameOf(block), block.entries())
                        .ifPresent(passage -> passages.put(passage.name(), passage));
            case "form" ->
                form.addAll(new FormReader(complaints, header.beatsPerBar(), band, patterns, passages)
                        .read(block.entries()));
            default -> {
                // told at its heading
            }
        }
    }

    private Word nameOf(Block block) {
        if (block.name().isEmpty()) {
            complaints.at(
                    block.heading(),
                    "no_name",
                    "This block has no name.",
                    "Write for example [" + block.kind() + " verse].");
        }
        return new Word(block.name(), block.heading().line(), block.heading().column());
    }
}
