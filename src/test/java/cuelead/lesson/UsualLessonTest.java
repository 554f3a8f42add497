package cuelead.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.plan.CallSettings.Fading;
import cuelead.time.Tempo;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order and the paces are common practice without a source: 60-70 %, then 75-85 %, then all of the tempo. */
class UsualLessonTest {
    private static List<String> lines(Dance dance, Pass.Over atLast) {
        LessonWriter writer = new LessonWriter(dance);
        return UsualLesson.of(dance, atLast).passes().stream().map(writer::line).toList();
    }

    @Test
    void sectionsAreJoinedToThoseBeforeThenEachWayIsFacedThenMusicComes() {
        assertEquals(
                List.of(
                        "section 1, walk, 3 times, clicks",
                        "section 2, walk, 3 times, clicks",
                        "sections 1 to 2, walk, twice, clicks",
                        "section 3, walk, 3 times, clicks",
                        "sections 1 to 3, walk, twice, clicks",
                        "section 4, walk, 3 times, clicks",
                        "sections 1 to 4, walk, twice, clicks",
                        "sections 1 to 4, steady, once, clicks",
                        "sections 1 to 4, full, once, clicks",
                        "wall 2, steady, once, clicks",
                        "wall 3, steady, once, clicks",
                        "wall 4, steady, once, clicks",
                        "dance, steady, once, music",
                        "dance, full, once, music",
                        "dance, full, once, music, calls fading"),
                lines(DemoDance.LAMP, Pass.Over.MUSIC));
    }

    @Test
    void tagsAndRestartsAreDrilledAloneBeforeTheDance() {
        List<String> waltz = lines(DemoDance.WALTZ, Pass.Over.MUSIC);
        assertEquals(
                waltz.indexOf("dance, steady, once, music") - 1, waltz.indexOf("tag of wall 2, steady, twice, clicks"));
        assertTrue(lines(DemoDance.ROPE_WALK, Pass.Over.MUSIC).contains("restart of wall 3, steady, twice, clicks"));
    }

    @Test
    void thePartsOfAPhrasedDanceAreLearnedEachByItself() {
        List<String> lines = lines(DemoDance.PHRASED, Pass.Over.CLICKS);
        assertTrue(lines.contains("sections A1 to A2, full, once, clicks"), lines.toString());
        assertTrue(lines.contains("section B1, full, once, clicks"), lines.toString());
        assertTrue(lines.contains("change A to B, steady, twice, clicks"), lines.toString());
        assertTrue(lines.contains("change B to A, steady, twice, clicks"), lines.toString());
        assertTrue(lines.contains("tag of wall 3, steady, twice, clicks"), lines.toString());
        assertFalse(lines.stream().anyMatch(line -> line.startsWith("wall")), lines.toString());
    }

    @Test
    void pacesLieWhereTeachersHaveThem() {
        Tempo full = new Tempo(100);
        assertTrue(
                Pace.WALK.at(full).beatsPerMinute() >= 60 && Pace.WALK.at(full).beatsPerMinute() <= 70);
        assertTrue(Pace.STEADY.at(full).beatsPerMinute() >= 75
                && Pace.STEADY.at(full).beatsPerMinute() <= 85);
    }

    @Test
    void callsFadeAtTheVeryEndAndWithoutASongNothingNeedsOne() {
        Lesson lesson = UsualLesson.of(DemoDance.LAMP, Pass.Over.CLICKS);
        List<Pass> passes = lesson.passes();
        assertEquals(Fading.WALL_BY_WALL, passes.get(passes.size() - 1).fading());
        assertFalse(needsMusic(lesson));
        assertTrue(needsMusic(UsualLesson.of(DemoDance.LAMP, Pass.Over.MUSIC)));
    }

    private static boolean needsMusic(Lesson lesson) {
        return lesson.passes().stream().anyMatch(pass -> pass.over() == Pass.Over.MUSIC);
    }
}
