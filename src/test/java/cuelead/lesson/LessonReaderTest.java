package cuelead.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;
import cuelead.report.Problem;
import cuelead.time.Tempo;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LessonReaderTest {
    private static LessonReader.Reading read(String text) {
        return new LessonReader("my-lesson.txt", DemoDance.ROPE_WALK).read(text);
    }

    @Test
    void fieldsStandInAnyOrderAndMayBeLeftOut() {
        Pass usual = new Pass(new Piece.OneSection(2), Pace.FULL, 1, Pass.Over.CLICKS);
        Pass slow = new Pass(
                new Piece.Joined(1, 3),
                new Pace.Beats(new Tempo(72.5)),
                3,
                Pass.Over.MUSIC,
                CallLevel.FIGURES,
                Fading.WALL_BY_WALL);
        Lesson lesson = read("section 2\nsections 1-3, music, calls figures fading, 3x, 72.5 bpm # slowly\n")
                .lesson()
                .orElseThrow();
        assertEquals(List.of(usual, slow), lesson.passes());
    }

    @Test
    void sectionsOfAPhrasedDanceHaveTheirNamesOnTheSheet() {
        LessonReader reader = new LessonReader("my-lesson.txt", DemoDance.PHRASED);
        Lesson lesson = reader.read("section b1, walk").lesson().orElseThrow();
        assertEquals(new Piece.OneSection(3), lesson.passes().get(0).piece());
        LessonReader again = new LessonReader("my-lesson.txt", DemoDance.PHRASED);
        Problem problem = again.read("section 1, walk").problems().get(0);
        assertTrue(problem.tryThis().contains("A1, A2, B1"), problem.tryThis());
    }

    /** Line and column of what is not understood, and a word that says what it is. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            section 9, walk                      | 1  | 9
            sections 3 to 2, walk                | 1  | follow
            chorus, walk                         | 1  | piece
            wall 0, walk                         | 1  | piece
            tag of wall 2, walk                  | 1  | no tag
            restart of wall 2, steady            | 1  | no restart
            section 1, slowish, clicks           | 12 | slowish
            section 1, walk, 0 times             | 18 | 1 to 20
            section 1, walk, 99 times            | 18 | 1 to 20
            section 1,   130 %                   | 14 | 40 to 125
            section 1, 5 bpm                     | 12 | 20 to 400
            section 1, walk, once, calls loudly  | 24 | call level
            section 1, walk,, clicks             | 17 | not understood
            """)
    void aMistakeIsToldAtItsPlace(String line, int column, String word) {
        LessonReader.Reading reading = read("# mine\n\n" + line + "\nsection 1, walk\n");
        assertTrue(reading.lesson().isEmpty());
        assertEquals(1, reading.problems().size());
        Problem problem = reading.problems().get(0);
        assertEquals(3, problem.line());
        assertEquals(column, problem.column());
        assertTrue(problem.sentence().contains(word), problem.sentence());
        assertTrue(problem.tryThis().length() > 10);
    }

    @Test
    void everyMistakeIsToldInOneReading() {
        List<Problem> problems =
                read("section 1, wlak\nsection 2, walk\nwal 3, full\n").problems();
        assertEquals(List.of(1, 3), problems.stream().map(Problem::line).toList());
    }

    @Test
    void aLessonOfCommentsAloneHasNoPass() {
        Problem problem = read("# nothing yet\n").problems().get(0);
        assertTrue(problem.sentence().contains("no pass"), problem.sentence());
    }
}
