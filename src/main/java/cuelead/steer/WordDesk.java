package cuelead.steer;

import cuelead.report.Refused;
import cuelead.voice.Clip;
import cuelead.voice.Mark;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import cuelead.voice.TakeClicks;
import cuelead.voice.TakeVerdict;
import cuelead.voice.TakeVerdict.Fault;
import java.nio.file.Path;
import java.util.Optional;

/** Where a word is counted in, taken, judged, heard against a click, marked and kept. Used on one thread. */
public final class WordDesk {
    private final RecordingSession session;
    private final WordDevices devices;
    private final WordKeeping keeping;
    private Phase phase = Phase.READY;
    private Optional<Path> kept = Optional.empty();

    /** What is done with the word now. */
    public enum Phase {
        READY,
        /** The microphone was opened and gives nothing yet. */
        WAITING,
        COUNT_IN,
        TAKING,
        JUDGED,
        /** What was recorded before is heard and marked. */
        RECORDED
    }

    /** At the word of a session. */
    public WordDesk(RecordingSession session, WordDevices devices, WordKeeping keeping) throws Refused {
        this.session = session;
        this.devices = devices;
        this.keeping = keeping;
        ready();
    }

    public Phase phase() {
        return phase;
    }

    public RecordingSession session() {
        return session;
    }

    /** Whether there is something to take back. */
    public boolean canTakeBack() {
        return keeping.canTakeBack();
    }

    /** The session has gone to another word; its recording is shown where it has one. */
    public void ready() throws Refused {
        phase = !session.isOver() && keeping.show(session) ? Phase.RECORDED : Phase.READY;
        kept = Optional.empty();
        devices.hush();
    }

    /** Where the take or recording is felt. */
    public Optional<Mark> mark() {
        return session.taken().flatMap(RecordingSession.Taken::mark);
    }

    /** Whether a take is being made. */
    public boolean isTaking() {
        return phase == Phase.WAITING || phase == Phase.COUNT_IN || phase == Phase.TAKING;
    }

    private boolean isHeardAgain() {
        return phase == Phase.JUDGED || phase == Phase.RECORDED;
    }

    /** Counts in, as soon as the microphone hears. */
    public void record() throws Refused {
        if (!isTaking()) {
            phase = Phase.WAITING;
            countIn();
        }
    }

    private void countIn() throws Refused {
        if (devices.microphone().hasHeard()) {
            devices.speakers().play(TakeClicks.countIn(devices.rate()), 0);
            phase = Phase.COUNT_IN;
        }
    }

    /** Gives a take up that is being made. */
    public void giveUp() throws Refused {
        if (isTaking()) {
            devices.listening().ifPresent(TakeBuffer::end);
            ready();
        }
    }

    /**
     * To be called some times a second.
     *
     * @return what is to be said of a take that was just made
     */
    public Optional<TakeVerdict> tick() throws Refused, InterruptedException {
        if (devices.listening().isPresent()) {
            devices.listening().get().listen();
        }
        if (phase == Phase.WAITING) {
            countIn();
        } else if (phase == Phase.COUNT_IN && devices.speakers().hasEnded()) {
            devices.microphone().begin();
            phase = Phase.TAKING;
        } else if (phase == Phase.TAKING && devices.microphone().isFull()) {
            return Optional.of(judge());
        }
        return Optional.empty();
    }

    private TakeVerdict judge() throws Refused, InterruptedException {
        phase = Phase.JUDGED;
        TakeVerdict verdict = session.take(devices.microphone().end());
        kept = verdict.fault() == Fault.DEAD
                ? Optional.empty()
                : Optional.of(keeping.keep(
                        session.word(), session.taken().orElseThrow().sound()));
        return verdict;
    }

    /** Whether there is a take that can become the recording. */
    public boolean canKeep() {
        return phase == Phase.JUDGED && kept.isPresent() && mark().isPresent();
    }

    /** Makes the take the recording, and goes on to the next word that is asked for. */
    public void keep() throws Refused, InterruptedException {
        if (canKeep()) {
            keeping.accept(session.word(), kept.orElseThrow(), session.taken().orElseThrow());
            session.accepted();
            ready();
        }
    }

    /** Moves the mark, and lets it be heard; that of a recording is written down at once, that of a take with the take. */
    public void nudge(double laterSeconds) throws Refused {
        if (isHeardAgain() && mark().isPresent()) {
            session.nudge(laterSeconds);
            if (phase == Phase.RECORDED) {
                keeping.mark(session.word(), mark().orElseThrow());
            }
            play();
        }
    }

    /** Lets the take or the recording be heard against a click. */
    public void play() throws Refused {
        Optional<Clip> clip = isHeardAgain() ? session.clip(devices.rate()) : Optional.empty();
        if (clip.isPresent()) {
            play(clip.get());
        }
    }

    /** Lets a word be heard against a click, whoever says it. */
    public void play(Clip clip) throws Refused {
        devices.speakers().play(TakeClicks.against(clip), 0);
    }

    /** Takes the last change back, and goes to its word. */
    public void takeBack() throws Refused, InterruptedException {
        Optional<String> word = keeping.takeBack();
        if (word.isPresent()) {
            if (!keeping.isRecorded(word.get())) {
                session.forget(word.get());
            }
            session.goTo(word.get());
            ready();
        }
    }
}
