package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.voice.Clip;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeVerdict;
import cuelead.voice.TakeVerdict.Use;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Records words one after the other: counts in, listens, judges, keeps. With keys its user decides; hands-free it accepts
 * what is good, and tries each other word three times. Used on one thread.
 */
final class RecordDesk implements KeyedLine.Shown {
    private static final int TRIES = 3;

    private final RecordingSession session;
    private final TakeBuffer buffer;
    private final Speakers speakers;
    private final WordKeeping keeping;
    private final Steering steering;
    private final List<String> news = new ArrayList<>();
    private Phase phase = Phase.READY;
    private Optional<Path> kept = Optional.empty();
    private int tries;
    private boolean isEnded;
    private String notice = "";

    /** Who decides what comes next. */
    enum Steering {
        BY_KEYS,
        HANDS_FREE
    }

    private enum Phase {
        READY,
        COUNT_IN,
        TAKING,
        JUDGED
    }

    RecordDesk(RecordingSession session, TakeBuffer buffer, Speakers speakers, WordKeeping keeping, Steering steering) {
        this.session = session;
        this.buffer = buffer;
        this.speakers = speakers;
        this.keeping = keeping;
        this.steering = steering;
    }

    @Override
    public boolean isOver() {
        return isEnded || session.isOver();
    }

    @Override
    public void obey(String stroke) throws Refused {
        Optional<RecordKeys> key = RecordKeys.of(stroke);
        if (key.isEmpty() || isOver()) {
            return;
        }
        if (key.get().laterSeconds() != 0) {
            session.nudge(key.get().laterSeconds());
            playAgainstClick();
            return;
        }
        switch (key.get()) {
            case TAKE -> countIn();
            case ACCEPT -> acceptOrTake();
            case PLAY -> playAgainstClick();
            case BACK -> {
                session.back();
                ready();
            }
            case SKIP -> {
                session.skip();
                ready();
            }
            default -> isEnded = true;
        }
    }

    private void ready() {
        phase = Phase.READY;
        kept = Optional.empty();
        tries = 0;
        notice = "";
        speakers.stop();
    }

    private void countIn() {
        if (phase == Phase.COUNT_IN || phase == Phase.TAKING || !buffer.hasHeard()) {
            return;
        }
        news.add("Say \"" + session.word() + "\" after the fourth click (" + session.number() + " of " + session.count()
                + ").");
        notice = "";
        phase = Phase.COUNT_IN;
        speakers.play(TakeClicks.countIn(buffer.rate()), 0);
    }

    private void acceptOrTake() throws Refused {
        boolean isUsable = session.taken().flatMap(RecordingSession.Taken::mark).isPresent();
        if (phase == Phase.JUDGED && isUsable) {
            accept();
        } else {
            countIn();
        }
    }

    private void accept() throws Refused {
        try {
            keeping.accept(session.word(), kept.orElseThrow(), session.taken().orElseThrow());
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
            isEnded = true;
            return;
        }
        session.accepted();
        ready();
    }

    private void playAgainstClick() {
        Optional<Clip> clip = phase == Phase.JUDGED ? session.clip(buffer.rate()) : Optional.empty();
        clip.ifPresent(now -> speakers.play(TakeClicks.against(now), 0));
    }

    @Override
    public void tick() throws Refused {
        if (isOver()) {
            return;
        }
        buffer.listen();
        if (phase == Phase.COUNT_IN && speakers.hasEnded()) {
            buffer.begin();
            phase = Phase.TAKING;
        } else if (phase == Phase.TAKING && buffer.isFull()) {
            judge();
        } else if (phase == Phase.READY && steering == Steering.HANDS_FREE) {
            countIn();
        }
    }

    private void judge() throws Refused {
        phase = Phase.JUDGED;
        tries++;
        TakeVerdict verdict = session.take(buffer.end());
        notice = verdict.fault().sentence();
        news.add(session.word() + ": " + notice);
        boolean isDead = verdict.fault() == TakeVerdict.Fault.DEAD;
        if (isDead && steering == Steering.HANDS_FREE && tries >= TRIES) {
            throw new Refused(notice + " All takes so far are kept.");
        }
        if (!isDead) {
            keep();
        }
        if (steering == Steering.HANDS_FREE && !isEnded) {
            goOn(verdict.fault().use());
        }
    }

    private void keep() throws Refused {
        try {
            kept = Optional.of(
                    keeping.keep(session.word(), session.taken().orElseThrow().sound()));
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
            isEnded = true;
        }
    }

    /** What is only doubtful is better than nothing, when it comes to that. */
    private void goOn(Use use) throws Refused {
        if (use == Use.GOOD || (use == Use.DOUBTFUL && tries >= TRIES)) {
            accept();
        } else if (tries >= TRIES) {
            session.skip();
            ready();
        } else {
            countIn();
        }
    }

    /** What has happened since the last time, a sentence each. */
    List<String> news() {
        List<String> told = List.copyOf(news);
        news.clear();
        return told;
    }

    /** {@code 3 of 30  "rock"  after the fourth click ...}. */
    @Override
    public String line() {
        if (isOver()) {
            return "";
        }
        return session.number() + " of " + session.count() + "   \"" + session.word() + "\"   " + state();
    }

    private String state() {
        if (!buffer.hasHeard()) {
            return "waiting for the microphone ...";
        }
        return switch (phase) {
            case READY -> session.isRecorded() ? "recorded; space records it again" : "space";
            case COUNT_IN -> "listen: four clicks, then say it";
            case TAKING -> "NOW";
            case JUDGED -> judged();
        };
    }

    private String judged() {
        return session.taken()
                .flatMap(RecordingSession.Taken::mark)
                .map(mark -> String.format(
                        Locale.ROOT, "%s Mark %.3f.   Enter keep   space again   p play", notice, mark.centreSeconds()))
                .orElse(notice + "   space again   n leave out");
    }
}
