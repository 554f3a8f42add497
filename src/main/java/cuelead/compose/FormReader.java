package cuelead.compose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads the lines of {@code [form]}: {@code PASSAGE: level=60>80 push=+1 drums=.. fill=.. crash
 * VOICE=player/octave,.. harmony=player/below bass=player/style comp=player/style,..}.
 */
final class FormReader {
    private static final List<String> KEYS =
            List.of("level", "push", "drums", "fill", "crash", "harmony", "bass", "comp");
    private static final int USUAL_LEVEL = 80;
    private static final int FULL_LEVEL = 120;
    private static final int MOST_PUSH_TENTHS = 100;

    private final Complaints complaints;
    private final int beatsPerBar;
    private final Map<String, Player> band;
    private final Map<String, DrumPattern> patterns;
    private final Map<String, Passage> passages;

    FormReader(
            Complaints complaints,
            int beatsPerBar,
            Map<String, Player> band,
            Map<String, DrumPattern> patterns,
            Map<String, Passage> passages) {
        this.complaints = complaints;
        this.beatsPerBar = beatsPerBar;
        this.band = band;
        this.patterns = patterns;
        this.passages = passages;
    }

    List<FormLine> read(List<ScoreReader.Entry> entries) {
        List<FormLine> lines = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Word name = entries.get(i).key();
            Passage passage = passages.get(name.text());
            if (passage == null) {
                complaints.unknown(name, "passage", passages.keySet());
                continue;
            }
            checkPlace(name, passage, i == 0, i == entries.size() - 1);
            lines.add(readLine(passage, entries.get(i)));
        }
        return lines;
    }

    private void checkPlace(Word name, Passage passage, boolean isFirst, boolean isLast) {
        if (passage.kind() == Passage.Kind.PICKUP && !isFirst) {
            complaints.at(name, "late_pickup", "A pickup can only begin the form.", "Move it to the first line.");
        }
        if (passage.kind() == Passage.Kind.FINAL && !isLast) {
            complaints.at(name, "early_final", "A final passage can only end the form.", "Move it to the last line.");
        }
    }

    private FormLine readLine(Passage passage, ScoreReader.Entry entry) {
        List<String> known = new ArrayList<>(KEYS);
        known.addAll(passage.voices().keySet());
        Settings settings = new Settings(complaints, entry.value(), known);
        List<Word> level = settings.word("level").map(word -> word.cutAt('>')).orElse(List.of());
        int from = level.isEmpty() ? USUAL_LEVEL : settings.whole(level.get(0), 0, FULL_LEVEL);
        int to = level.size() < 2 ? from : settings.whole(level.get(1), 0, FULL_LEVEL);
        return new FormLine(
                passage,
                from,
                to,
                settings.word("push").map(word -> readPush(word)).orElse(0.0),
                pattern(settings.word("drums")),
                pattern(settings.word("fill")).filter(fill -> fits(fill, passage, settings)),
                settings.has("crash") ? FormLine.Opening.CRASH : FormLine.Opening.PLAIN,
                roles(passage, settings));
    }

    private boolean fits(DrumPattern fill, Passage passage, Settings settings) {
        boolean fits = fill.bars() * beatsPerBar <= passage.fullBeats();
        if (!fits) {
            settings.word("fill")
                    .ifPresent(word -> complaints.at(word, "long_fill", "The fill is longer than its passage.", ""));
        }
        return fits;
    }

    /** Percent with at most one decimal, as a share. */
    private double readPush(Word word) {
        if (!word.text().matches("[+-]?\\d(\\.\\d)?%?")) {
            complaints.at(
                    word,
                    "bad_push",
                    Complaints.quoted(word) + " is not a push in percent.",
                    "Write for example push=+1.5 or push=-1.");
            return 0;
        }
        return Double.parseDouble(word.text().replace("%", "")) / MOST_PUSH_TENTHS;
    }

    private Optional<DrumPattern> pattern(Optional<Word> word) {
        return word.flatMap(name -> named(name, "pattern", patterns));
    }

    private <T> Optional<T> named(Word name, String what, Map<String, T> known) {
        if (!known.containsKey(name.text())) {
            complaints.unknown(name, what, known.keySet());
        }
        return Optional.ofNullable(known.get(name.text()));
    }

    private List<Role> roles(Passage passage, Settings settings) {
        List<Role> roles = new ArrayList<>();
        for (String voice : passage.voices().keySet()) {
            add(
                    settings.words(voice),
                    roles,
                    (player, how) -> octave(how).map(octaves -> new Role.Tune(player, voice, octaves)));
        }
        if (settings.has("harmony") && !passage.voices().containsKey("tune")) {
            settings.word("harmony")
                    .ifPresent(word -> complaints.at(
                            word, "no_tune", "There is no voice named tune here to harmonise.", "Leave harmony out."));
        }
        add(
                settings.words("harmony"),
                roles,
                (player, how) -> side(how).map(side -> new Role.Harmony(player, "tune", side)));
        add(
                settings.words("bass"),
                roles,
                (player, how) -> style(how, "bass style", BassStyle.names(), BassStyle::named)
                        .map(style -> new Role.Bass(player, style)));
        add(
                settings.words("comp"),
                roles,
                (player, how) -> style(how, "comp style", CompStyle.names(), CompStyle::named)
                        .map(style -> new Role.Comp(player, style)));
        return roles;
    }

    /** Makes a role of a player and the word behind the slash (empty where there is none). */
    private interface RoleMaker {
        Optional<? extends Role> make(Player player, Word how);
    }

    private void add(List<Word> words, List<Role> roles, RoleMaker maker) {
        for (Word word : words) {
            int slash = word.text().indexOf('/');
            Word name = slash < 0 ? word : word.upTo(slash);
            Word how = slash < 0 ? word.from(word.text().length()) : word.from(slash + 1);
            named(name, "player", band)
                    .flatMap(player -> maker.make(player, how))
                    .ifPresent(roles::add);
        }
    }

    private Optional<Integer> octave(Word how) {
        return switch (how.text()) {
            case "" -> Optional.of(0);
            case "up" -> Optional.of(1);
            case "down" -> Optional.of(-1);
            default -> {
                complaints.unknown(how, "octave", List.of("up", "down"));
                yield Optional.empty();
            }
        };
    }

    private Optional<Role.Side> side(Word how) {
        return switch (how.text()) {
            case "", "below" -> Optional.of(Role.Side.BELOW);
            case "above" -> Optional.of(Role.Side.ABOVE);
            default -> {
                complaints.unknown(how, "side", List.of("below", "above"));
                yield Optional.empty();
            }
        };
    }

    private <T> Optional<T> style(
            Word how, String what, Collection<String> names, Function<String, Optional<T>> named) {
        Optional<T> style = named.apply(how.text());
        if (style.isEmpty()) {
            complaints.unknown(how, what, names);
        }
        return style;
    }
}
