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
        return new LessonReader("my-lesson.txt", DemoDance.laid(DemoDance.ROPE_WALK)).read(text);
    }

    private static LessonReader.Reading readPhrased(String text) {
        return new LessonReader("my-lesson.txt", DemoDance.laid(DemoDance.PHRASED)).read(text);
    }

    @Test
    void fieldsStandInAnyOrder() {
        Pass slow = new Pass(
                new Piece.Joined(1, 3),
                new Pace.Beats(new Tempo(72.5)),
                3,
                Pass.Over.MUSIC,
                CallLevel.FIGURES,
                Fading.WALL_BY_WALL);
        Lesson lesson = read("fading, sections 1-3, music, calls figures, 3x, 72.5 bpm # slowly\n")
                .lesson()
                .orElseThrow();
        assertEquals(List.of(slow), lesson.passes());
    }

    @Test
    void whatIsLeftOutIsWalkingToClicksOrMusicAsItIs() {
        Pass clicks = new Pass(new Piece.OneSection(2), Pace.WALK, 1, Pass.Over.CLICKS);
        Pass music = new Pass(new Piece.WholeDance(), Pace.FULL, 1, Pass.Over.MUSIC);
        assertEquals(
                List.of(clicks, music),
                read("section 2\ndance, music").lesson().orElseThrow().passes());
    }

    /** As people write, and how it is saved. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            section two, walk, three times          | section 2, walk, 3 times, clicks
            section 2 to 4, steady pace, twice      | sections 2 to 4, steady, twice, clicks
            Sections 2 through 4 at full speed      | sections 2 to 4, full, once, clicks
            sections one and two, Twelve Times      | sections 1 to 2, walk, 12 times, clicks
            sections 1 & 2; 3 x; no music           | sections 1 to 2, walk, 3 times, clicks
            sections 2–4, 72                   | sections 2 to 4, 72 bpm, once, clicks
            section s3, at 72 a minute              | section 3, 72 bpm, once, clicks
            section 3, tempo 72                     | section 3, 72 bpm, once, clicks
            section 4, 72 percent                   | section 4, 72 %, once, clicks
            section 4, seventy two %                | section 4, 72 %, once, clicks
            whole dance, to the music, fading       | dance, full, once, music, calls fading
            the whole dance, music, fading calls    | dance, full, once, music, calls fading
            dance, music, calls figures fading      | dance, full, once, music, calls figures, calls fading
            music, steady, wall two, without calls  | wall 2, steady, once, music, no calls
            dance to the song, calls none           | dance, full, once, music, no calls
            restart, twice                          | restart of wall 3, walk, twice, clicks
            the restart of wall three, one time     | restart of wall 3, walk, once, clicks
            """)
    void naturalWordsAreRead(String line, String saved) {
        LessonReader.Reading reading = read(line);
        assertEquals(List.of(), reading.problems());
        Pass pass = reading.lesson().orElseThrow().passes().get(0);
        assertEquals(saved, new LessonWriter(DemoDance.ROPE_WALK).line(pass));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            section b1, walk               | section B1, walk, once, clicks
            part a                         | sections A1 to A2, walk, once, clicks
            change from part A to B, twice | change A to B, walk, twice, clicks
            tag                            | tag of wall 3, walk, once, clicks
            """)
    void aPhrasedDanceHasPartsWithTheirNamesOnTheSheet(String line, String saved) {
        LessonReader.Reading reading = readPhrased(line);
        assertEquals(List.of(), reading.problems());
        Pass pass = reading.lesson().orElseThrow().passes().get(0);
        assertEquals(saved, new LessonWriter(DemoDance.PHRASED).line(pass));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            section 1, walk  | A1, A2, B1
            part C, walk     | A, B
            change B to B    | A, B, A, TAG, B
            tag of wall 2    | tag of wall 3
            """)
    void whatAPhrasedDanceHasNotIsToldWithWhatItHas(String line, String choices) {
        Problem problem = readPhrased(line).problems().get(0);
        assertEquals(1, problem.column());
        assertTrue(problem.tryThis().contains(choices), problem.tryThis());
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
            part A, walk                         | 1  | no parts
            sections 1 and 3, walk               | 1  | follow
            wall 99, walk                        | 1  | no wall 99
            walk, 3 times                        | 1  | no piece
            section 1, section 2, walk           | 12 | one piece
            section 1, walk, twice, steady       | 25 | one pace
            section 1, twice, 3 times            | 19 | so many
            section 1, music, clicks             | 19 | clicks or to music
            section 1, calls none, calls words   | 24 | one level
            section 1, 72, 80 %                  | 16 | one pace
            section 1, walk, 1.5 times           | 18 | 1 to 20
            section 1, slowish, clicks           | 12 | slowish
            section 1, walk, 0 times             | 18 | 1 to 20
            section 1, walk, 99 times            | 18 | 1 to 20
            section 1,   130 %                   | 14 | 40 to 125
            section 1, 5 bpm                     | 12 | 40 to 125
            section 1, walk, once, calls loudly  | 24 | call level
            section 1, 300 bpm                   | 12 | 40 to 125 beats
            section 1, walk, wildly              | 18 | not understood
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

    /** Nine walls and a half of 32 counts, one broken off at 16, begin in 300 s at 100 a minute. */
    @Test
    void wallsThatAreThereAreToldWhereOneIsNot() {
        int walls = DemoDance.laid(DemoDance.ROPE_WALK).walls();
        Problem problem = read("wall " + (walls + 1)).problems().get(0);
        assertTrue(problem.sentence().contains("walls 1 to " + walls), problem.sentence());
        assertEquals(List.of(), read("wall " + walls).problems());
        Problem cutShort = read("wall " + walls + ", music").problems().get(0);
        assertTrue(cutShort.sentence().contains("music ends"), cutShort.sentence());
    }

    @Test
    void theHeadNamesOnlyWhatTheDanceHas() {
        String rope = new LessonWriter(DemoDance.ROPE_WALK).write(UsualLesson.of(DemoDance.ROPE_WALK, Pass.Over.MUSIC));
        assertTrue(rope.contains("| restart of wall 3 |") && !rope.contains("tag of"), rope);
        String lamp = new LessonWriter(DemoDance.LAMP).write(UsualLesson.of(DemoDance.LAMP, Pass.Over.MUSIC));
        assertTrue(!lamp.contains("restart") && !lamp.contains("tag"), lamp);
        String phrased = new LessonWriter(DemoDance.PHRASED).write(UsualLesson.of(DemoDance.PHRASED, Pass.Over.MUSIC));
        assertTrue(phrased.contains("| change A to B |") && phrased.contains("| tag of wall 3 |"), phrased);
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
