package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Wish;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SessionTextTest {
    private static final Choices CHOICES = new Choices(
            new Tempo(96.5),
            OptionalDouble.of(1.5),
            CallLevel.SECTIONS,
            CallSettings.Fading.WALL_BY_WALL,
            Wish.Click.EVERY_BEAT,
            CallsGo.APART,
            Speed.of(0.8),
            Wish.Way.EASIER,
            Optional.of(Path.of("my words")),
            Optional.of("Hall"),
            Optional.of("Ear"),
            Optional.of("Desk"));

    private static final Session SESSION = new Session(
            List.of(
                    new Recent("ONE", Path.of("one.txt"), Optional.of(Path.of("one.mp3"))),
                    new Recent("TWO", Path.of("two.pdf"), Optional.empty())),
            CHOICES,
            false,
            true,
            Optional.of(new Rectangle(10, -20, 800, 600)));

    @Test
    void isReadAsItWasWritten() {
        assertEquals(SESSION, SessionText.read(SessionText.of(SESSION)));
        assertEquals(Session.FIRST, SessionText.read(SessionText.of(Session.FIRST)));
    }

    @Test
    void whatIsNotUnderstoodIsLeftOut() {
        String text = SessionText.of(SESSION)
                .replace("SECTIONS", "SHOUTS")
                .replace("clicks\t96.5", "clicks\tfast")
                .replace("speed\t8000", "speed\t80000000000")
                .replace("window\t10", "window\tten");
        Session read = SessionText.read(text + "\nnonsense\ndance\tbroken\n\t\n");
        assertEquals(SESSION.recents(), read.recents());
        assertEquals(CallLevel.WORDS, read.choices().level());
        assertEquals(CallSettings.Fading.WALL_BY_WALL, read.choices().fading());
        assertEquals(Choices.USUAL.clicks(), read.choices().clicks());
        assertEquals(Speed.ORIGINAL, read.choices().speed());
        assertEquals(Optional.empty(), read.window());
        assertEquals(Session.FIRST, SessionText.read(""));
    }

    @Test
    void theLastDanceStandsFirstAndOnlyOnce() {
        Session again = SESSION.with(new Recent("TWO B", Path.of("two.pdf"), Optional.empty()));
        assertEquals(
                List.of("TWO B", "ONE"),
                again.recents().stream().map(Recent::title).toList());
        Session many = SESSION;
        for (int i = 0; i < 100; i++) {
            many = many.with(new Recent("D" + i, Path.of("d" + i), Optional.empty()));
        }
        assertEquals(24, many.recents().size());
        assertEquals("D99", many.recents().get(0).title());
    }
}
