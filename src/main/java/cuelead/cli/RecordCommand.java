package cuelead.cli;

import cuelead.output.TakeFolder;
import cuelead.practice.NeededWords;
import cuelead.practice.Voicing;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.steer.DeviceChoice;
import cuelead.steer.LostDevices;
import cuelead.steer.MicrophoneChoice;
import cuelead.steer.SpeakerPair;
import cuelead.steer.Told;
import cuelead.steer.WordKeeping;
import cuelead.time.SampleRate;
import cuelead.voice.FolderMarks;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records the user's own call-words. */
@Command(
        name = "record",
        header = "Record your own call-words.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Asks for each word that the dances need and that is not recorded yet: four clicks, then you say it."
                    + " Cuelead finds the word in the take, marks where it is felt, and tells what to do better. Takes"
                    + " are never written over: they stay in the folder \"takes\".",
            "Without a SHEET it marks the sound files that you have put into the folder.",
            "Keys: space records (again), Enter keeps and goes on, p plays the word against a click, left and right"
                    + " move its mark by 5 milliseconds, down and up by 20, comma and point by 1, b goes back, n leaves a"
                    + " word out, q ends. Words that are recorded can be heard and their marks moved, too: go back to"
                    + " them, or begin with --again."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead record cues/lamp-on-the-quay.txt",
            "  cuelead record my-sheet.txt my-other-sheet.txt --folder my-voice --hands-free",
            "  cuelead record --folder my-voice          marks the files that lie there",
            "  cuelead play my-sheet.txt --words my-voice"
        })
final class RecordCommand implements Callable<Integer> {
    private static final SampleRate RATE = new SampleRate(48_000);
    private static final long POLL_MILLIS = 10;
    private static final List<String> WHAT_TO_DO = List.of(
            "Begin softly: clicks can be loud. Best are a quiet room and", "a hand's breadth to the microphone.");

    private static final String WITHOUT_KEYS =
            "Recording by keys needs a terminal; there, start it again, or add --hands-free.";

    private final Surroundings surroundings;

    @Parameters(arity = "0..*", paramLabel = "SHEET", description = "The step sheets of the dances that you will call.")
    private List<Path> sheets = List.of();

    @Option(
            names = "--folder",
            paramLabel = "DIR",
            defaultValue = "my-words",
            description = "Where the recordings are kept. Usual is my-words.")
    private Path folder;

    @Option(
            names = "--hands-free",
            description = "Goes on by itself: keeps what is good, and tries each other word three times.")
    private boolean handsFree;

    @Option(
            names = "--again",
            description =
                    "Asks for all words of the dances, also for those that are recorded: to hear them, to move their"
                            + " marks, to record them again.")
    private boolean again;

    @Option(
            names = "--device",
            paramLabel = "NAME",
            description = "The microphone: its name, or a part of it that no other has (\"cuelead devices\" lists"
                    + " them). Usual is the computer's usual one.")
    private Optional<String> device;

    @Mixin
    private FiguresOption figures;

    RecordCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        if (sheets.isEmpty()) {
            FolderMarks marked = FolderMarks.of(folder, Voicing.wordFiles());
            new ProblemPrinter(surroundings.err()).tellInShort(marked.problems());
            new WordKeeping(folder, new TakeFolder(folder), marked, Voicing.wordFiles()).write();
            surroundings.out().println(Told.number(marked.words().size(), "word") + " marked in " + folder + ".");
            return Failures.DONE;
        }
        List<String> needed = NeededWords.of(sheets, figures.file(), surroundings.places());
        TakeFolder takes = new TakeFolder(folder);
        FolderMarks before = FolderMarks.of(folder, Voicing.wordFiles());
        new ProblemPrinter(surroundings.err()).tellInShort(before.problems());
        List<String> recorded = before.words();
        RecordingSession session = new RecordingSession(
                needed, recorded, again ? RecordingSession.Asked.ALL : RecordingSession.Asked.MISSING);
        if (session.isOver()) {
            tell(session);
        } else {
            record(session, new WordKeeping(folder, takes, before, Voicing.wordFiles()));
        }
        return Failures.DONE;
    }

    private void record(RecordingSession session, WordKeeping keeping) throws Refused, InterruptedException {
        Optional<KeyedLine> screen =
                handsFree ? Optional.empty() : Optional.of(new KeyedLine(surroundings, WITHOUT_KEYS));
        try (Microphone microphone = MicrophoneChoice.open(device, surroundings.devices(), RATE);
                SpeakerPair speakers = DeviceChoice.USUAL.open(surroundings.devices(), RATE)) {
            keeping.write();
            TakeBuffer buffer = new TakeBuffer(microphone, System::nanoTime);
            RecordDesk.Steering steering = handsFree ? RecordDesk.Steering.HANDS_FREE : RecordDesk.Steering.BY_KEYS;
            show(new RecordDesk(session, buffer, speakers.main(), keeping, steering), screen, speakers);
        } finally {
            if (session.missing().size() < session.count()) {
                tell(session);
            }
        }
    }

    private void show(RecordDesk desk, Optional<KeyedLine> screen, SpeakerPair speakers)
            throws Refused, InterruptedException {
        if (screen.isPresent()) {
            WHAT_TO_DO.forEach(surroundings.err()::println);
            RecordKeys.TOLD.forEach(surroundings.err()::println);
            screen.get().show(desk, new LostDevices(speakers));
        } else {
            WHAT_TO_DO.forEach(surroundings.err()::println);
            goOnAlone(desk, new LostDevices(speakers));
        }
    }

    private void goOnAlone(RecordDesk desk, LostDevices lost) throws Refused, InterruptedException {
        while (!desk.isOver()) {
            desk.tick();
            lost.news().forEach(surroundings.err()::println);
            desk.news().forEach(surroundings.out()::println);
            surroundings.out().flush();
            Thread.sleep(POLL_MILLIS);
        }
    }

    private void tell(RecordingSession session) {
        List<String> missing = session.missing();
        surroundings
                .out()
                .println((session.count() - missing.size()) + " of " + Told.number(session.count(), "word")
                        + " recorded in " + folder + "; play with --words " + folder + ".");
        if (!missing.isEmpty()) {
            surroundings.out().println("Still missing: " + String.join(", ", missing) + ".");
        }
    }
}
