package cuelead.cli;

import cuelead.dance.Dance;
import cuelead.lesson.Lesson;
import cuelead.lesson.LessonFile;
import cuelead.lesson.LessonReader;
import cuelead.lesson.LessonWriter;
import cuelead.lesson.Pass;
import cuelead.lesson.PieceWords;
import cuelead.lesson.UsualLesson;
import cuelead.output.Targets;
import cuelead.output.TextFile;
import cuelead.output.TrackTags;
import cuelead.plan.Timeline;
import cuelead.practice.Practice;
import cuelead.practice.Track;
import cuelead.practice.Walkthrough;
import cuelead.practice.Walkthrough.PassLength;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.steer.Told;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Walks a class through a dance. */
@Command(
        name = "walkthrough",
        header = "Walk through a dance: section by section, then joined, then faster, then to the music.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Makes a lesson of the dance and plays it, pass by pass: each section alone and slow, then joined to those"
                    + " before it, then each wall, then tags, restarts and changes of parts alone, then to the music.",
            "Each pass says what comes and counts in. Keys: right (or Page Down, as a presenter's clicker sends) skips to"
                    + " the next pass, left goes back, Enter begins the pass again, - and + begin it again slower or"
                    + " faster, space pauses, ? shows all keys, q quits.",
            "Music rises within a second and a half where it follows clicks or a pause, not from one time to the next.",
            "--tempo takes a full speed of your own, to clicks; with --speed all passes are so much slower or faster."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead walkthrough cues/lamp-on-the-quay.txt",
            "  cuelead walkthrough my-sheet.txt my-song.mp3 --print",
            "  cuelead walkthrough my-sheet.txt my-song.mp3 --save my-lesson.txt",
            "  cuelead walkthrough my-sheet.txt my-song.mp3 --lesson my-lesson.txt",
            "  cuelead walkthrough my-sheet.txt my-song.mp3 -o at-home.mp3 --pass 2-4"
        })
final class WalkthroughCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private DanceOptions options;

    @Option(
            names = "--lesson",
            paramLabel = "FILE",
            description = "The passes of this file, which --save has written and you may have changed.")
    private Optional<Path> lessonFile;

    @Option(names = "--print", description = "Show the lesson with its minutes, and play nothing.")
    private boolean isPrinted;

    @Option(
            names = "--save",
            paramLabel = "FILE",
            description = "Write the lesson as a text file, one pass a line, and play nothing.")
    private Optional<Path> saved;

    @Option(
            names = "--pass",
            paramLabel = "N",
            converter = PassNumbers.Converter.class,
            description = "Only these passes of the lesson, as --print numbers them: 4, or 2-4, or 2,5.")
    private Optional<PassNumbers> only;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "Write the lesson into this file (.wav, .flac or .mp3) for practice at home, and play nothing. "
                            + Caution.OF_LICENCES)
    private Optional<Path> output;

    @Option(
            names = "--stems",
            paramLabel = "DIR",
            description = "With -o: also write its parts into this folder, as \"render\" does.")
    private Optional<Path> stems;

    @Mixin
    private SoundOptions sound;

    WalkthroughCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        if (stems.isPresent() && output.isEmpty()) {
            throw new Refused("--stems writes the parts of a track: name the track, too, with -o.");
        }
        Wish wish = options.wish(options.callsGo(sound));
        if (isPrinted || saved.isPresent() || output.isPresent()) {
            prepareOnly(wish);
        } else {
            new LiveStart(surroundings, wish, sound).play(practice -> {
                Walkthrough walkthrough = practice.walkthrough(lesson(practice));
                return play -> play.teach(walkthrough);
            });
        }
        return Failures.DONE;
    }

    private void prepareOnly(Wish wish) throws Refused, InterruptedException {
        if (saved.isPresent()) {
            Targets.checkNew(saved.get());
        }
        Optional<TrackTarget> target = output.map(file -> new TrackTarget(surroundings, file, stems));
        if (target.isPresent()) {
            target.get().check(wish, lessonFile.stream().toArray(Path[]::new));
        }
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepare()) {
            Walkthrough walkthrough = practice.walkthrough(lesson(practice));
            if (isPrinted) {
                new LessonListing(practice.dance(), walkthrough, surroundings.out()).print();
            }
            if (saved.isPresent()) {
                save(practice.dance(), walkthrough.lesson());
            }
            if (target.isPresent()) {
                write(practice, walkthrough, target.get());
            }
            start.remindOfErrors(practice);
        }
    }

    private Lesson lesson(Practice practice) throws Refused {
        Dance dance = practice.dance();
        Lesson lesson = lessonFile.isPresent()
                ? read(lessonFile.get(), practice.timeline())
                : UsualLesson.of(dance, practice.song().isPresent() ? Pass.Over.MUSIC : Pass.Over.CLICKS);
        return only.isPresent() ? only.get().of(lesson) : lesson;
    }

    private Lesson read(Path file, Timeline timeline) throws Refused {
        LessonReader.Reading reading = LessonFile.read(file, timeline);
        if (reading.lesson().isEmpty()) {
            reading.problems().forEach(problem -> surroundings.err().println(problem.message()));
            throw new Refused(file + " has " + Told.number(reading.problems().size(), "mistake")
                    + ", so nothing is played: correct "
                    + (reading.problems().size() == 1 ? "it" : "them") + " and try again.");
        }
        return reading.lesson().get();
    }

    private void save(Dance dance, Lesson lesson) throws Refused {
        TextFile.write(saved.get(), new LessonWriter(dance).write(lesson));
        surroundings
                .err()
                .println("Wrote " + saved.get() + " ("
                        + Told.number(lesson.danced().size(), "pass", "passes") + "). Play it with --lesson "
                        + saved.get() + ".");
    }

    private void write(Practice practice, Walkthrough walkthrough, TrackTarget target)
            throws Refused, InterruptedException {
        target.check(practice);
        practice.await(practice.toFrame());
        Track track = walkthrough.track();
        target.write(track, tags(practice.dance(), walkthrough));
        double seconds = track.rate().secondsAt(track.toFrame());
        surroundings.err().println("Wrote " + target.file() + " (" + Told.minutes(seconds) + ").");
        target.remindOfLicence(track);
    }

    /** Single passes are named; their tempo is theirs where it is one, else that of full speed. */
    private TrackTags tags(Dance dance, Walkthrough walkthrough) {
        List<Tempo> tempos =
                walkthrough.lengths().stream().map(PassLength::tempo).distinct().toList();
        Tempo tempo = tempos.size() == 1 ? tempos.get(0) : walkthrough.full();
        return new TrackTags(dance.header().title() + what(dance, walkthrough.lesson()), tempo);
    }

    private static String what(Dance dance, Lesson lesson) {
        if (lesson.isWhole()) {
            return ", walkthrough";
        } else if (lesson.danced().size() == 1) {
            Pass pass = lesson.dancedPasses().get(0);
            return ", " + new PieceWords(dance).written(pass.piece()) + ", " + LessonWriter.written(pass.pace());
        }
        return ", passes " + PassNumbers.told(lesson.danced());
    }
}
