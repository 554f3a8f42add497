package cuelead.window.words;

import cuelead.output.TakeFolder;
import cuelead.practice.NeededWords;
import cuelead.practice.VoiceWish;
import cuelead.practice.Voicing;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.steer.MicrophoneChoice;
import cuelead.steer.SpeakerPair;
import cuelead.steer.WordDevices;
import cuelead.steer.WordKeeping;
import cuelead.time.SampleRate;
import cuelead.voice.FolderMarks;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import cuelead.window.frame.Choices;
import cuelead.window.frame.FoundProblem;
import cuelead.window.frame.Means;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * Works at the words of one dance on a thread of its own; no call waits for it. Devices are opened when they are needed
 * first.
 */
final class WordsRoom implements WordDevices {
    private static final SampleRate RATE = new SampleRate(48_000);
    private static final long LOOK_MILLIS = 15;
    private static final long IDLE_MILLIS = 200;

    private final Path sheet;
    private final Path folder;
    private final Means means;
    private final Watcher watcher;
    private final BlockingQueue<WordsAtDesk.Order> orders = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::run, "cuelead-words");
    private volatile Choices choices;
    private volatile boolean isClosed;
    private Optional<SpeakerPair> speakers = Optional.empty();
    private Optional<Microphone> microphone = Optional.empty();
    private Optional<TakeBuffer> buffer = Optional.empty();

    /** Is told how it goes. Called on the thread of the room. */
    interface Watcher {
        void shown(WordsScene scene);

        void told(String sentence);

        /** There is one recording more: so many words are recorded now. */
        void recorded(long words);
    }

    /**
     * Begins to work.
     *
     * @param folder of the recordings; made where it is not there
     */
    WordsRoom(Path sheet, Path folder, Choices choices, Means means, Watcher watcher) {
        this.sheet = sheet;
        this.folder = folder;
        this.choices = choices;
        this.means = means;
        this.watcher = watcher;
        thread.setDaemon(true);
        thread.start();
    }

    boolean isOf(Path otherSheet, Path otherFolder) {
        return !isClosed && sheet.equals(otherSheet) && folder.equals(otherFolder);
    }

    boolean isWatchedBy(Watcher one) {
        return watcher == one;
    }

    void ask(WordsAtDesk.Order order) {
        orders.add(order);
    }

    /** Other devices are chosen: those that are open are closed. */
    void choose(Choices others) {
        choices = others;
        fallSilent();
    }

    /** Closes its devices; the words stay. */
    void fallSilent() {
        ask(words -> {
            words.giveUp();
            closeDevices();
        });
    }

    /** Makes an end of it. */
    void close() {
        isClosed = true;
        orders.add(words -> {});
    }

    private void run() {
        try {
            work(open());
        } catch (Refused refused) {
            watcher.told(refused.getMessage());
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
        } finally {
            isClosed = true;
            closeDevices();
        }
    }

    private WordsAtDesk open() throws Refused {
        List<String> words = NeededWords.of(List.of(sheet), Optional.empty(), means.places());
        if (words.isEmpty()) {
            throw new Refused("This dance is called without any words.");
        }
        TakeFolder takes = new TakeFolder(folder);
        FolderMarks before = FolderMarks.of(folder, Voicing.wordFiles());
        before.problems().stream().findFirst().ifPresent(problem -> watcher.told(told(problem)));
        WordKeeping keeping = new WordKeeping(folder, takes, before, Voicing.wordFiles());
        RecordingSession session = new RecordingSession(words, before.words(), RecordingSession.Asked.MISSING);
        return new WordsAtDesk(
                session,
                this,
                keeping,
                Voicing.of(VoiceWish.USUAL, means.places().cache()).at(RATE, new ArrayList<>()));
    }

    private static String told(Problem problem) {
        return problem.file() + ": " + FoundProblem.told(problem);
    }

    private void work(WordsAtDesk words) throws InterruptedException {
        Optional<WordsScene> seen = Optional.empty();
        while (!isClosed) {
            Optional<WordsScene> scene = Optional.of(words.scene());
            if (!scene.equals(seen)) {
                watcher.shown(scene.get());
                if (seen.isPresent() && scene.get().recorded() > seen.get().recorded()) {
                    watcher.recorded(scene.get().recorded());
                }
            }
            seen = scene;
            WordsAtDesk.Order order =
                    orders.poll(speakers.isPresent() ? LOOK_MILLIS : IDLE_MILLIS, TimeUnit.MILLISECONDS);
            try {
                if (order != null) {
                    order.to(words);
                }
                words.tick();
            } catch (Refused refused) {
                watcher.told(refused.getMessage());
                recover(words);
            }
        }
    }

    private void recover(WordsAtDesk words) {
        try {
            words.giveUp();
        } catch (Refused again) {
            watcher.told(again.getMessage());
        }
        closeDevices();
    }

    private void closeDevices() {
        microphone.ifPresent(Microphone::close);
        speakers.ifPresent(SpeakerPair::close);
        microphone = Optional.empty();
        buffer = Optional.empty();
        speakers = Optional.empty();
    }

    @Override
    public SampleRate rate() {
        return RATE;
    }

    @Override
    public Speakers speakers() throws Refused {
        if (speakers.isEmpty()) {
            speakers = Optional.of(choices.devices(means.devices()).open(means.devices(), RATE));
        }
        return speakers.get().main();
    }

    @Override
    public TakeBuffer microphone() throws Refused {
        if (buffer.isEmpty()) {
            speakers();
            microphone = Optional.of(MicrophoneChoice.open(choices.microphone(), means.devices(), RATE));
            buffer = Optional.of(new TakeBuffer(microphone.get(), System::nanoTime));
        }
        return buffer.get();
    }

    @Override
    public Optional<TakeBuffer> listening() {
        return buffer;
    }

    @Override
    public void hush() {
        speakers.ifPresent(SpeakerPair::stop);
    }
}
