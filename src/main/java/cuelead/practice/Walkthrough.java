package cuelead.practice;

import cuelead.lesson.Lesson;
import cuelead.lesson.Pass;
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
     * @param pass    it
     * @param tempo   counts a minute
     * @param seconds with its run-ups and rest
     */
    public record PassLength(Pass pass, Tempo tempo, double seconds) {}

    /** Tries every pass. */
    static Walkthrough of(Rounds rounds) throws Refused {
        List<PassLength> lengths = new ArrayList<>();
        int number = 0;
        for (Pass pass : rounds.lesson().passes()) {
            number++;
            double seconds = 0;
            for (int repeat = 1; repeat <= pass.times(); repeat++) {
                seconds += rounds.seconds(number, pass, repeat);
            }
            lengths.add(new PassLength(pass, pass.pace().at(rounds.full()), seconds));
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

    /** Every pass with its length, in order. */
    public List<PassLength> lengths() {
        return lengths;
    }

    /** The whole lesson as a track. */
    public Track track() throws Refused {
        rounds.awaitMusic();
        List<Round> all = new ArrayList<>();
        for (int pass = 1; pass <= lesson().passes().size(); pass++) {
            all.addAll(roundsOf(pass));
        }
        return new LessonTrack(rounds.rate(), all);
    }

    /**
     * One pass as a track.
     *
     * @param pass from 1
     */
    public Track track(int pass) throws Refused {
        rounds.awaitMusic();
        return new LessonTrack(rounds.rate(), roundsOf(pass));
    }

    private List<Round> roundsOf(int number) throws Refused {
        Pass pass = lesson().passes().get(number - 1);
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
