package cuelead.practice;

import cuelead.report.Refused;
import cuelead.sound.Levels;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Leads the levels that a practice began with to those that were found while it plays, in steps that nobody notices by
 * themselves. What the user has made louder or softer meanwhile stays so. Used on one thread.
 */
final class Settling {
    private static final double STEP_DB = 0.5;
    private static final double CLOSE_ENOUGH_DB = 0.05;

    private final Source source;
    private Levels reached;
    private boolean isDone;

    /** Tells the levels that were found; empty while they are looked for. */
    @FunctionalInterface
    interface Source {
        Optional<Levels> found() throws Refused;
    }

    /**
     * @param source says where to go
     * @param begun  the levels that it began with
     */
    Settling(Source source, Levels begun) {
        this.source = source;
        reached = begun;
    }

    /**
     * The next step; empty while there is none, and when all are done.
     *
     * @throws Refused what kept the song from being listened to; once
     */
    Optional<UnaryOperator<Levels>> next() throws Refused {
        if (isDone) {
            return Optional.empty();
        }
        Optional<Levels> found;
        try {
            found = source.found();
        } catch (Refused e) {
            isDone = true;
            throw e;
        }
        return found.flatMap(this::towards);
    }

    private Optional<UnaryOperator<Levels>> towards(Levels aim) {
        double musicDb = step(aim.musicDb() - reached.musicDb());
        double voiceDb = step(aim.voiceDb() - reached.voiceDb());
        double clickDb = step(aim.clickDb() - reached.clickDb());
        if (Math.max(Math.abs(musicDb), Math.max(Math.abs(voiceDb), Math.abs(clickDb))) < CLOSE_ENOUGH_DB) {
            isDone = true;
            return Optional.empty();
        }
        UnaryOperator<Levels> step = levels -> new Levels(
                levels.musicDb() + musicDb,
                levels.voiceDb() + voiceDb,
                levels.clickDb() + clickDb,
                levels.dip(),
                levels.sides());
        reached = step.apply(reached);
        return Optional.of(step);
    }

    private static double step(double db) {
        return Math.max(-STEP_DB, Math.min(STEP_DB, db));
    }
}
