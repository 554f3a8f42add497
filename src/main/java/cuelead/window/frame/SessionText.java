package cuelead.window.frame;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Wish;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.awt.Rectangle;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A session as lines of text, a name and its values parted by tabs. Lines that are not understood are as if they were not
 * there: a session is a comfort, and nobody is to be held up by it.
 */
final class SessionText {
    private static final String DANCE = "dance";

    private final Map<String, String[]> lines = new HashMap<>();
    private final List<Recent> recents = new ArrayList<>();

    private SessionText(String text) {
        for (String line : text.split("\\R")) {
            String[] cells = line.split("\t", -1);
            if (cells[0].equals(DANCE)) {
                recent(cells).ifPresent(recents::add);
            } else {
                lines.put(cells[0], cells);
            }
        }
    }

    static String of(Session session) {
        Choices choices = session.choices();
        List<String> text = new ArrayList<>();
        for (Recent recent : session.recents()) {
            text.add(String.join(
                    "\t",
                    DANCE,
                    plain(recent.title()),
                    recent.sheet().toString(),
                    recent.song().map(Path::toString).orElse("")));
        }
        text.add("clicks\t" + choices.clicks().beatsPerMinute());
        choices.leadBeats().ifPresent(lead -> text.add("lead\t" + lead));
        text.add("calls\t" + choices.level() + "\t" + choices.fading());
        text.add("click\t" + choices.click());
        text.add("go\t" + choices.callsGo());
        text.add("speed\t" + choices.speed().songFramesInUnit());
        text.add("way\t" + choices.way());
        choices.ownWords().ifPresent(folder -> text.add("words\t" + folder));
        choices.device().ifPresent(name -> text.add("device\t" + plain(name)));
        choices.ear().ifPresent(name -> text.add("ear\t" + plain(name)));
        choices.microphone().ifPresent(name -> text.add("microphone\t" + plain(name)));
        text.add("look\t" + (session.isDark() ? "dark" : "light") + "\t" + (session.isStill() ? "still" : "moving"));
        session.window()
                .ifPresent(where ->
                        text.add("window\t" + where.x + "\t" + where.y + "\t" + where.width + "\t" + where.height));
        return String.join("\n", text) + "\n";
    }

    private static String plain(String words) {
        return words.replaceAll("\\s", " ");
    }

    static Session read(String text) {
        SessionText lines = new SessionText(text);
        Choices usual = Choices.USUAL;
        Choices choices = new Choices(
                lines.value("clicks", 1, cell -> new Tempo(Double.parseDouble(cell)))
                        .orElse(usual.clicks()),
                lines.value("lead", 1, Double::valueOf).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                lines.value("calls", 1, CallLevel::valueOf).orElse(usual.level()),
                lines.value("calls", 2, CallSettings.Fading::valueOf).orElse(usual.fading()),
                lines.value("click", 1, Wish.Click::valueOf).orElse(usual.click()),
                lines.value("go", 1, CallsGo::valueOf).orElse(usual.callsGo()),
                lines.value("speed", 1, cell -> new Speed(Integer.parseInt(cell)))
                        .orElse(usual.speed()),
                lines.value("way", 1, Wish.Way::valueOf).orElse(usual.way()),
                lines.value("words", 1, Path::of),
                lines.value("device", 1, Function.identity()),
                lines.value("ear", 1, Function.identity()),
                lines.value("microphone", 1, Function.identity()));
        return new Session(
                lines.recents,
                choices,
                lines.value("look", 1, "dark"::equals).orElse(Session.FIRST.isDark()),
                lines.value("look", 2, "still"::equals).orElse(Session.FIRST.isStill()),
                lines.window());
    }

    private Optional<Rectangle> window() {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            value("window", i, Integer::valueOf).ifPresent(numbers::add);
        }
        return numbers.size() < 4
                ? Optional.empty()
                : Optional.of(new Rectangle(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3)));
    }

    private static Optional<Recent> recent(String[] cells) {
        try {
            return cells.length == 4 && !cells[2].isEmpty()
                    ? Optional.of(new Recent(
                            cells[1],
                            Path.of(cells[2]),
                            cells[3].isEmpty() ? Optional.empty() : Optional.of(Path.of(cells[3]))))
                    : Optional.empty();
        } catch (InvalidPathException ofAnotherSystem) {
            return Optional.empty();
        }
    }

    private <T> Optional<T> value(String name, int cell, Function<String, T> reading) {
        String[] cells = lines.getOrDefault(name, new String[0]);
        if (cell >= cells.length || cells[cell].isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.apply(cells[cell]));
        } catch (IllegalArgumentException nonsense) {
            return Optional.empty();
        }
    }
}
