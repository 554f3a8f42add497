package cuelead.cli;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.practice.CountedSound;
import cuelead.practice.Delays;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.steer.DeviceChoice;
import cuelead.steer.LivePlay;
import cuelead.steer.SpeakerOpening;
import cuelead.steer.SpeakerPair;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The demo: played live, or, where there is no sound device, written into a file with its calls told at once. */
final class Demo {
    private static final String FILE = "cuelead-demo.wav";

    private final Surroundings surroundings;

    Demo(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    int run() throws Refused, InterruptedException {
        Path sheet = DemoFiles.sheet(surroundings)
                .orElseThrow(() -> new Refused("The demo's sheet " + DemoFiles.SHEET
                        + " was not found; start Cuelead in its own folder, or give it a sheet (cuelead --help)."));
        Wish wish = Wishes.usual(sheet, Optional.empty(), Optional.empty(), Optional.empty());
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (OpenedKeys opened = OpenedKeys.of(surroundings);
                SpeakerOpening opening = SpeakerOpening.begin(surroundings.devices(), DeviceChoice.USUAL, wish.rate());
                Practice practice = start.prepareToPlay()) {
            Optional<SpeakerPair> speakers = speakers(opening, practice);
            if (speakers.isPresent()) {
                play(practice, speakers.get(), wish, opened);
                start.tellProblems(practice);
            } else {
                writeInstead(start);
            }
        }
        return Failures.DONE;
    }

    private static Optional<SpeakerPair> speakers(SpeakerOpening opening, Practice practice) {
        try {
            return Optional.of(opening.at(practice.rate()));
        } catch (Refused none) {
            return Optional.empty(); // told by writeInstead
        }
    }

    private void play(Practice practice, SpeakerPair speakers, Wish wish, OpenedKeys opened)
            throws InterruptedException, Refused {
        surroundings.err().println("Demo: " + practice.dance().header().title() + ". More: cuelead --help.");
        Caution.OF_A_CLASS.forEach(surroundings.err()::println);
        new LivePlay(practice, speakers, wish, Delays.NONE, new TerminalStage(surroundings, opened.keys())).practise();
    }

    private void writeInstead(PracticeStart start) throws InterruptedException, Refused {
        try (Practice practice = start.prepareQuietly()) {
            writeInstead(start, practice);
        }
    }

    private void writeInstead(PracticeStart start, Practice practice) throws InterruptedException, Refused {
        start.tellProblems(practice);
        start.awaitWhole(practice);
        Path file = write(practice);
        surroundings
                .err()
                .println("There is no sound device here, so the demo's practice track is in " + file
                        + " and these are its calls:");
        for (SpokenCall call : practice.spokenCalls()) {
            surroundings.out().println(CallLine.of(call.call()));
        }
        surroundings.out().println(PlanListing.ending(practice));
        surroundings.err().println("Listen to them: the practice track is " + file + ".");
    }

    private Path write(Practice practice) throws InterruptedException, Refused {
        Path usual = surroundings.temporary().resolve(FILE);
        try {
            return write(practice, usual);
        } catch (Refused taken) {
            return write(practice, folderOfItsOwn(taken).resolve(FILE));
        }
    }

    /** Another user's file may stand in the usual place. */
    private Path folderOfItsOwn(Refused taken) throws Refused {
        try {
            return Files.createTempDirectory(surroundings.temporary(), "cuelead-");
        } catch (IOException unwritable) {
            throw taken;
        }
    }

    private Path write(Practice practice, Path file) throws InterruptedException, Refused {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            long frames = practice.toFrame() - practice.fromFrame();
            CountedSound mix = new CountedSound(practice.mix(), frames, "Writing", progress);
            new WavFile().write(mix, practice.rate(), WavFormat.PCM_16, file);
        }
        return file;
    }
}
