package cuelead.practice;

import cuelead.lesson.Lesson;
import cuelead.lesson.Pass;
import cuelead.plan.LeftOut;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.Tempo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A lesson made ready: to be written, pass by pass or as one, and to be danced live. Used on one thread. */
public final class Walkthrough {
    private final Rounds rounds;
    private final List<PassLength> lengths;

    private Walkthrough(Rounds rounds, List<PassLength> lengths) {
        this.rounds = rounds;
        this.lengths = lengths;
    }

    /**
     * How long a pass takes.
     *
     * @param number  of the pass, from 1
     * @param pass    it
     * @param tempo   counts a minute
     * @param seconds with its run-ups and rest
     */
    public record PassLength(int number, Pass pass, Tempo tempo, double seconds) {}

    /** Tries every pass that is danced. */
    static Walkthrough of(Rounds rounds) throws Refused {
        List<PassLength> lengths = new ArrayList<>();
        for (int number : rounds.lesson().danced()) {
            Pass pass = rounds.lesson().pass(number);
            lengths.add(new PassLength(number, pass, pass.pace().at(rounds.full()), rounds.seconds(number, pass, 1)));
        }
        return new Walkthrough(rounds, List.copyOf(lengths));
    }

    public Lesson lesson() {
        return rounds.lesson();
    }

    /** Counts a minute at full speed. */
    public Tempo full() {
        return rounds.full();
    }

    /** Every pass that is danced with its length, in order. */
    public List<PassLength> lengths() {
        return lengths;
    }

    /** What is not called when a pass is danced once, and why. */
    public List<LeftOut> leftOut(int number) throws Refused {
        return rounds.leftOut(number, lesson().pass(number));
    }

    /** All of it as a track. */
    public Track track() throws Refused {
        rounds.awaitMusic();
        List<Round> all = new ArrayList<>();
        for (int number : lesson().danced()) {
            all.addAll(roundsOf(number));
        }
        return new LessonTrack(rounds.rate(), all);
    }

    private List<Round> roundsOf(int number) throws Refused {
        Pass pass = lesson().pass(number);
        List<Round> all = new ArrayList<>();
        for (int repeat = 1; repeat <= pass.times(); repeat++) {
            all.add(rounds.round(number, pass, repeat));
        }
        return all;
    }

    /** Dances it live; the speakers play nothing else meanwhile. */
    public LiveWalkthrough live(Speakers speakers, Optional<Speakers> calls, Delays delays) throws Refused {
        return new LiveWalkthrough(rounds, Outputs.ofPractice(speakers, calls, delays, rounds.rate()));
    }
}
