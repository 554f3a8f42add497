package cuelead.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;
import cuelead.report.Problem;
import cuelead.time.Tempo;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written is read back the same, to the last digit of a pace. */
class LessonLawTest {
    /** Whole ones of 48 counts in 300 s at 100 a minute, after 24 counts. */
    private static final int WALLS = 9;

    @Property(tries = 300)
    void aLessonIsReadBackTheSame(@ForAll("lessons") Lesson lesson) {
        assertReadBack(lesson, DemoDance.WALTZ);
    }

    @Property(tries = 300)
    void spacesAndCapitalsChangeNothing(@ForAll("lessons") Lesson lesson) {
        String text = new LessonWriter(DemoDance.WALTZ).write(lesson);
        String spaced = text.toUpperCase(Locale.ROOT)
                .replace(" ", "  ")
                .replace(",", " ,")
                .replace("\n", " \r\n");
        assertEquals(List.of(), read(spaced, DemoDance.WALTZ).problems());
        assertEquals(lesson, read(spaced, DemoDance.WALTZ).lesson().orElseThrow());
    }

    /** Its first thing may stand last, and no comma is needed. */
    @Property(tries = 300)
    void theOrderOfWhatALineSaysChangesNothing(@ForAll("lessons") Lesson lesson, @ForAll Random random) {
        LessonWriter writer = new LessonWriter(DemoDance.WALTZ);
        List<String> lines = new ArrayList<>();
        for (Pass pass : lesson.passes()) {
            List<String> said = new ArrayList<>(List.of(writer.line(pass).split(", ")));
            Collections.shuffle(said, random);
            lines.add(String.join(random.nextBoolean() ? ", " : " ", said));
        }
        LessonReader.Reading reading = read(String.join("\n", lines), DemoDance.WALTZ);
        assertEquals(List.of(), reading.problems());
        assertEquals(lesson, reading.lesson().orElseThrow());
    }

    /** Whatever it is, a line with one word more than once, or with another in its place, is a mistake. */
    @Property(tries = 300)
    void whatIsSaidTwiceIsAMistakeAtThatPlace(@ForAll("lessons") Lesson lesson, @ForAll Random random) {
        Pass pass = lesson.passes().get(0);
        List<String> said = List.of(new LessonWriter(DemoDance.WALTZ).line(pass).split(", "));
        String twice = said.get(random.nextInt(said.size()));
        String line = String.join(", ", said) + ", " + twice;
        List<Problem> problems = read(line, DemoDance.WALTZ).problems();
        assertEquals(1, problems.size(), line);
        assertEquals(line.length() - twice.length() + 1, problems.get(0).column(), line);
    }

    @Property(tries = 20)
    void theUsualLessonsAreReadBackTheSame(@ForAll Pass.Over atLast) {
        for (Dance dance : List.of(DemoDance.LAMP, DemoDance.WALTZ, DemoDance.ROPE_WALK, DemoDance.PHRASED)) {
            assertReadBack(UsualLesson.of(dance, atLast), dance);
        }
    }

    private static void assertReadBack(Lesson lesson, Dance dance) {
        LessonReader.Reading reading = read(new LessonWriter(dance).write(lesson), dance);
        assertEquals(List.of(), reading.problems());
        assertEquals(lesson, reading.lesson().orElseThrow());
    }

    private static LessonReader.Reading read(String text, Dance dance) {
        return new LessonReader("lesson.txt", DemoDance.laid(dance)).read(text);
    }

    @Provide
    Arbitrary<Lesson> lessons() {
        Arbitrary<Pass> passes = Combinators.combine(
                        pieces(),
                        paces(),
                        Arbitraries.integers().between(1, Pass.MOST_TIMES),
                        Arbitraries.of(Pass.Over.class),
                        Arbitraries.of(CallLevel.class),
                        Arbitraries.of(Fading.class))
                .as(Pass::new);
        return passes.list().ofMinSize(1).ofMaxSize(12).map(Lesson::new);
    }

    private static Arbitrary<Piece> pieces() {
        int sections = new PieceWords(DemoDance.WALTZ).sections();
        return Arbitraries.oneOf(
                Arbitraries.integers().between(1, sections).map(Piece.OneSection::new),
                Arbitraries.integers().between(1, sections - 1).map(first -> new Piece.Joined(first, sections)),
                Arbitraries.integers().between(1, WALLS).map(Piece.Wall::new),
                Arbitraries.just(new Piece.TagOf(2)),
                Arbitraries.just(new Piece.WholeDance()));
    }

    private static Arbitrary<Pace> paces() {
        return Arbitraries.oneOf(
                Arbitraries.doubles()
                        .between(Pace.Share.LEAST, Pace.Share.MOST)
                        .ofScale(4)
                        .map(Pace.Share::new),
                Arbitraries.doubles().between(40, 125).ofScale(3).map(bpm -> new Pace.Beats(new Tempo(bpm))),
                Arbitraries.of(Pace.WALK, Pace.STEADY, Pace.FULL));
    }
}
