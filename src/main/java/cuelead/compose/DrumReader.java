package cuelead.compose;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads {@code [drums NAME]}: a line a drum, a letter a step, {@code .} for silence; bar lines between bars. All
 * bars of a line have as many steps, a multiple of the beats in a bar; all lines have as many bars.
 */
final class DrumReader {
    private static final int STEPS_A_BEAT_AT_MOST = 8;

    private final Complaints complaints;
    private final int beatsPerBar;

    DrumReader(Complaints complaints, int beatsPerBar) {
        this.complaints = complaints;
        this.beatsPerBar = beatsPerBar;
    }

    Optional<DrumPattern> read(Word name, List<ScoreReader.Entry> entries) {
        int bars = 0;
        List<DrumPattern.Hit> hits = new ArrayList<>();
        for (ScoreReader.Entry entry : entries) {
            Optional<DrumSound> sound = DrumSound.named(entry.key().text());
            if (sound.isEmpty()) {
                complaints.unknown(entry.key(), "drum", DrumSound.names());
                continue;
            }
            List<Word> steps =
                    entry.value().stream().filter(word -> !word.isBarLine()).toList();
            if (bars != 0 && steps.size() != bars) {
                complaints.at(
                        entry.key(),
                        "uneven_bars",
                        "This line has " + steps.size() + " bars, the first line of the pattern " + bars + ".",
                        "Give each drum as many bars.");
            }
            bars = bars == 0 ? steps.size() : bars;
            for (int bar = 0; bar < steps.size(); bar++) {
                readBar(steps.get(bar), bar, sound.get(), hits);
            }
        }
        if (bars == 0) {
            complaints.at(
                    name, "empty_pattern", "This pattern has no drums.", "Add a line such as \"kick: x...x...\".");
            return Optional.empty();
        }
        return Optional.of(new DrumPattern(name.text(), bars, hits));
    }

    private void readBar(Word steps, int bar, DrumSound sound, List<DrumPattern.Hit> hits) {
        int count = steps.text().length();
        if (count % beatsPerBar != 0 || count > STEPS_A_BEAT_AT_MOST * beatsPerBar) {
            complaints.at(
                    steps,
                    "bad_steps",
                    "A bar of " + count + " steps does not divide into " + beatsPerBar + " beats.",
                    "Write 1, 2, 3 or 4 steps a beat.");
            return;
        }
        long ticksPerStep = beatsPerBar * Beats.TICKS_PER_BEAT / count;
        for (int step = 0; step < count; step++) {
            Word letter = steps.from(step).upTo(1);
            int velocity = velocity(letter);
            if (velocity > 0) {
                Beats at = Beats.of((long) bar * beatsPerBar).plus(new Beats(step * ticksPerStep));
                hits.add(new DrumPattern.Hit(at, sound, velocity));
            }
        }
    }

    private int velocity(Word letter) {
        return switch (letter.text()) {
            case "." -> 0;
            case "g" -> 38;
            case "o" -> 62;
            case "x" -> 88;
            case "X" -> 112;
            default -> {
                complaints.at(
                        letter,
                        "bad_stroke",
                        Complaints.quoted(letter) + " is not a stroke.",
                        "Strokes are X (accent), x, o (soft), g (ghost) and . (none).");
                yield 0;
            }
        };
    }
}
