package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.dance.Part;
import cuelead.lesson.Pass.Over;
import cuelead.lesson.Piece.Joined;
import cuelead.lesson.Piece.OneSection;
import cuelead.lesson.Piece.Wall;
import cuelead.lesson.Piece.WholeDance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lesson that is made where the instructor has written none. A dance is long and its sections follow each other, so
 * each section is learned alone and then joined to those before it ("progressive part": Naylor and Briggs 1963, in
 * textbooks of motor learning). How often and how fast is common practice without a source: each section 2 to 4 times
 * at 60-70 % of the tempo, then 75-85 %, then all of it; the whole wall twice without music, the second time at
 * its speed; then each wall, since landmarks change; changes of parts, restarts and tags alone, entered eight counts before; then slowed
 * music with all calls, then full tempo with calls that fade. Slowed music sounds poor below some 70 %, so walking is
 * done to clicks.
 */
public final class UsualLesson {
    private static final int TIMES_ALONE = 3;
    private static final int TIMES_JOINED = 2;
    private static final int TIMES_OF_CHANGES = 2;
    /** There are no more ways to face for most dances. */
    private static final int MOST_WALLS = 4;

    private final Dance dance;
    private final Over atLast;
    private final List<Pass> passes = new ArrayList<>();

    private UsualLesson(Dance dance, Over atLast) {
        this.dance = dance;
        this.atLast = atLast;
    }

    /**
     * The lesson of a dance.
     *
     * @param atLast what the last passes are danced to
     */
    public static Lesson of(Dance dance, Over atLast) {
        return new UsualLesson(dance, atLast).lesson();
    }

    private Lesson lesson() {
        int first = 1;
        for (Part part : dance.parts()) {
            addSections(first, part.sections().size());
            first += part.sections().size();
        }
        addWalls();
        addChanges();
        add(new WholeDance(), Pace.STEADY, 1, atLast);
        add(new WholeDance(), Pace.FULL, 1, atLast);
        passes.add(new Pass(new WholeDance(), Pace.FULL, 1, atLast).withFading());
        return new Lesson(passes);
    }

    /** Each section alone, then with all of its part that come before it. */
    private void addSections(int first, int sections) {
        for (int section = first; section < first + sections; section++) {
            add(new OneSection(section), Pace.WALK, TIMES_ALONE, Over.CLICKS);
            if (section > first) {
                add(new Joined(first, section), Pace.WALK, TIMES_JOINED, Over.CLICKS);
            }
        }
        Piece all = sections > 1 ? new Joined(first, first + sections - 1) : new OneSection(first);
        add(all, Pace.STEADY, 1, Over.CLICKS);
        add(all, Pace.FULL, 1, Over.CLICKS);
    }

    private void addWalls() {
        if (dance.isPhrased()) {
            return; // its parts come in their own order, which is danced as a whole
        }
        IntStream.rangeClosed(2, facings()).forEach(wall -> add(new Wall(wall), Pace.STEADY, 1, Over.CLICKS));
    }

    /** Ways in which a wall of the dance can begin. */
    private int facings() {
        int turn = Math.floorMod(dance.parts().get(0).netTurn().degrees(), 360);
        int facings = 1;
        for (int facing = turn; facing != 0 && facings < MOST_WALLS; facing = (facing + turn) % 360) {
            facings++;
        }
        return facings;
    }

    /** Changes of parts, restarts and each tag where it comes first. */
    private void addChanges() {
        Stream.of(Changes.ofParts(dance), Changes.restarts(dance), Changes.firstTags(dance))
                .flatMap(List::stream)
                .forEach(change -> add(change, Pace.STEADY, TIMES_OF_CHANGES, Over.CLICKS));
    }

    private void add(Piece piece, Pace pace, int times, Over over) {
        passes.add(new Pass(piece, pace, times, over));
    }
}
