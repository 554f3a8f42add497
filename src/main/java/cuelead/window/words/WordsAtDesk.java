package cuelead.window.words;

import cuelead.report.Refused;
import cuelead.steer.WordDesk;
import cuelead.steer.WordDesk.Phase;
import cuelead.steer.WordDevices;
import cuelead.steer.WordKeeping;
import cuelead.steer.WordRow;
import cuelead.voice.Clip;
import cuelead.voice.MonoSound;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import cuelead.voice.TakeVerdict.Fault;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;

/** The words of a dance at a desk: one is in hand, and any other can be taken. Used on one thread. */
final class WordsAtDesk {
    private final RecordingSession session;
    private final WordDevices devices;
    private final WordKeeping keeping;
    private final Voice voice;
    private final WordDesk desk;
    private Optional<WordRow> row = Optional.empty();
    private Optional<MonoSound> drawn = Optional.empty();
    private Optional<TakeShape> shape = Optional.empty();

    /** Something that the user wants. */
    @FunctionalInterface
    interface Order {
        void to(WordsAtDesk words) throws Refused, InterruptedException;
    }

    /**
     * With the first word in hand that is not recorded, or the first of all.
     *
     * @param session with one word or more
     * @param voice   says what is not recorded
     */
    WordsAtDesk(RecordingSession session, WordDevices devices, WordKeeping keeping, Voice voice) throws Refused {
        this.session = session;
        this.devices = devices;
        this.keeping = keeping;
        this.voice = voice;
        if (session.isOver()) {
            session.goTo(session.words().get(0));
        }
        desk = new WordDesk(session, devices, keeping);
    }

    void goTo(String word) throws Refused {
        if (!word.equals(session.word())) {
            stopRow();
            session.goTo(word);
            desk.ready();
        }
    }

    /** Records it; a take that is being made is given up. */
    void recordOrNot() throws Refused {
        if (desk.isTaking()) {
            stopRow();
            desk.giveUp();
        } else {
            desk.record();
        }
    }

    /** Makes the take the recording; the word stays in hand. */
    void keep() throws Refused, InterruptedException {
        String word = session.word();
        desk.keep();
        session.goTo(word);
        desk.ready();
    }

    /** Lets it be heard against a click, as it is called. */
    void play() throws Refused {
        if (desk.mark().isPresent()) {
            desk.play();
            return;
        }
        Optional<Clip> clip = voice.say(session.word());
        if (clip.isEmpty()) {
            throw new Refused("The voice cannot say \"" + session.word() + "\": record it.");
        }
        desk.play(clip.get());
    }

    void nudge(double laterSeconds) throws Refused {
        desk.nudge(laterSeconds);
    }

    /** Puts the mark to a place in the take. */
    void markAt(double seconds) throws Refused {
        if (desk.mark().isPresent()) {
            desk.nudge(seconds - desk.mark().get().centreSeconds());
        }
    }

    /** Takes the last recording or mark back that was kept. */
    void takeBack() throws Refused, InterruptedException {
        stopRow();
        desk.takeBack();
    }

    /** Goes through all words that are missing by itself, or no longer. */
    void rowOrNot() throws Refused {
        if (row.isPresent()) {
            stopRow();
            desk.giveUp();
            return;
        }
        Optional<String> first = session.missing().stream().findFirst();
        if (first.isPresent()) {
            session.goTo(first.get());
            desk.ready();
            row = Optional.of(new WordRow(desk));
        }
    }

    private void stopRow() {
        row = Optional.empty();
    }

    /** After something was refused, or before the devices are closed: no take is made any more. */
    void giveUp() throws Refused {
        stopRow();
        desk.giveUp();
        devices.hush();
    }

    /** To be called some times a second. */
    void tick() throws Refused, InterruptedException {
        if (row.isEmpty()) {
            desk.tick();
            return;
        }
        String word = session.word();
        row.get().tick();
        if (row.get().isOver()) {
            stopRow();
            session.goTo(word);
            desk.ready();
        }
    }

    WordsScene scene() {
        List<WordsScene.Word> words = session.words().stream()
                .map(word -> new WordsScene.Word(word, keeping.isRecorded(word)))
                .toList();
        draw();
        return new WordsScene(
                words,
                session.number() - 1,
                desk.phase(),
                told(),
                shape,
                desk.mark(),
                WordsScene.level(devices.listening().map(TakeBuffer::peak).orElse(0.0)),
                row.isPresent(),
                new WordsScene.Can(desk.canKeep(), desk.canTakeBack()));
    }

    /** The picture of a sound is made once. */
    private void draw() {
        Optional<MonoSound> sound = session.taken().map(RecordingSession.Taken::sound);
        if (!sound.equals(drawn)) {
            drawn = sound;
            shape = sound.map(TakeShape::new);
        }
    }

    private String told() {
        Phase phase = desk.phase();
        return switch (phase) {
            case READY -> "The computer's voice says it, as long as you have not recorded it.";
            case WAITING -> "Waiting for the microphone\u2026";
            case COUNT_IN -> "Four clicks, then say it.";
            case TAKING -> "Now.";
            case RECORDED -> "Your own recording is called.";
            case JUDGED -> judged();
        };
    }

    private String judged() {
        Fault fault = session.taken().orElseThrow().verdict().fault();
        String after =
                !desk.canKeep() ? "" : fault == Fault.NONE ? " Keep it, or record it again." : " You may keep it.";
        return fault.sentence() + after;
    }
}
