package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.voice.Clip;
import cuelead.voice.Mark;
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

    /** Who decides what comes next. */
    enum Steering {
        BY_KEYS,
        HANDS_FREE
    }

    private enum Phase {
        READY,
        COUNT_IN,
        TAKING,
        JUDGED,
        /** What was recorded before is heard and marked. */
        RECORDED
    }

    RecordDesk(RecordingSession session, TakeBuffer buffer, Speakers speakers, WordKeeping keeping, Steering steering)
            throws Refused {
        this.session = session;
        this.buffer = buffer;
        this.speakers = speakers;
        this.keeping = keeping;
        this.steering = steering;
        ready();
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
            nudge(key.get().laterSeconds());
            return;
        }
        switch (key.get()) {
            case TAKE -> countIn();
            case ACCEPT -> acceptOrTake();
            case PLAY -> playAgainstClick();
            case HELP -> news.addAll(RecordKeys.TOLD);
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

    private void ready() throws Refused {
        phase = !isOver() && steering == Steering.BY_KEYS && keeping.show(session) ? Phase.RECORDED : Phase.READY;
        kept = Optional.empty();
        tries = 0;
        speakers.stop();
    }

    /** The mark of a recording is kept at once, that of a take with the take. */
    private void nudge(double laterSeconds) throws Refused {
        if (!isHeardAgain()) {
            return;
        }
        session.nudge(laterSeconds);
        if (phase == Phase.RECORDED) {
            keeping.mark(session.word(), mark().orElseThrow());
        }
        playAgainstClick();
    }

    private boolean isHeardAgain() {
        return phase == Phase.JUDGED || phase == Phase.RECORDED;
    }

    private Optional<Mark> mark() {
        return session.taken().flatMap(RecordingSession.Taken::mark);
    }

    private void countIn() {
        if (phase == Phase.COUNT_IN || phase == Phase.TAKING || !buffer.hasHeard()) {
            return;
        }
        if (steering == Steering.HANDS_FREE) {
            news.add("Say \"" + session.word() + "\" after the fourth click (" + session.number() + " of "
                    + session.count() + ").");
        }
        phase = Phase.COUNT_IN;
        speakers.play(TakeClicks.countIn(buffer.rate()), 0);
    }

    private void acceptOrTake() throws Refused {
        if (phase == Phase.JUDGED && mark().isPresent()) {
            accept();
        } else if (phase == Phase.RECORDED) {
            session.skip();
            ready();
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
        Optional<Clip> clip = isHeardAgain() ? session.clip(buffer.rate()) : Optional.empty();
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
        String sentence = verdict.fault().sentence();
        if (steering == Steering.HANDS_FREE || verdict.fault().use() != Use.GOOD) {
            news.add(session.word() + ": " + sentence);
        }
        boolean isDead = verdict.fault() == TakeVerdict.Fault.DEAD;
        if (isDead && steering == Steering.HANDS_FREE && tries >= TRIES) {
            throw new Refused(sentence + " All takes so far are kept.");
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

    @Override
    public List<String> news() {
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
        return session.number() + " of " + session.count() + "  \"" + session.word() + "\"  " + state();
    }

    private String state() {
        if (!buffer.hasHeard()) {
            return "waiting for the microphone ...";
        }
        return switch (phase) {
            case READY -> "space records it";
            case COUNT_IN -> "listen: four clicks, then say it";
            case TAKING -> "NOW";
            case JUDGED ->
                mark().map(mark -> judged() + told(mark) + ": Enter keeps  space again  p plays")
                        .orElse("space again  n leaves out");
            case RECORDED -> "recorded, " + told(mark().orElseThrow()) + ": p plays  Enter on  space again";
        };
    }

    private String judged() {
        return session.taken().orElseThrow().verdict().fault().use() == Use.GOOD ? "good, " : "";
    }

    private static String told(Mark mark) {
        return String.format(Locale.ROOT, "%.3f s", mark.centreSeconds());
    }
}
