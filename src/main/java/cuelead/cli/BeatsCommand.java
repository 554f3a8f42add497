package cuelead.cli;

import cuelead.output.Targets;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFinding;
import cuelead.song.Correction;
import cuelead.song.Ear;
import cuelead.song.Hearing;
import cuelead.song.SongNote;
import cuelead.steer.BeatWords;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Hears the beats of songs, tells of them, and puts them right. */
@Command(
        name = "beats",
        header = "Hear the beats of a song, or put them right.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Listens to a song and writes its beats into a file beside it (my-song.beats beside my-song.mp3):"
                    + " seconds, beat in the bar, count in the phrase, parted by tabs.",
            "Where that file is there already, it is read; what you have corrected is never written over.",
            "Several songs, or a folder of them, are listened to side by side.",
            "With --tap the song plays: tap the space bar on every beat for some bars, beginning with a count 1, and your"
                    + " beat is carried through the song, or through what lies between --from and --to."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead beats my-song.mp3",
            "  cuelead beats my-songs                      every song of a folder",
            "  cuelead beats my-song.mp3 --click try.wav   a click on each beat",
            "  cuelead beats my-song.mp3 --tap             tap along",
            "  cuelead beats my-song.mp3 --one-at 12.4     that beat is 1",
            "  cuelead beats my-song.mp3 --half-beat --from 1:02 --to 1:30"
        })
final class BeatsCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(arity = "1..*", paramLabel = "SONG", description = "The song, or several, or a folder.")
    private List<Path> files;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "The beat file, where it shall not lie beside the song.")
    private Optional<Path> output = Optional.empty();

    @Option(names = "--again", description = "Listen again, although there is a beat file that Cuelead wrote.")
    private boolean again;

    @Option(names = "--click", paramLabel = "FILE", description = "Write the song with a click on each beat (WAV).")
    private Optional<Path> click = Optional.empty();

    @Option(names = "--tap", description = "Play the song, and put its beats right by tapping and with keys.")
    private boolean isTapped;

    @Mixin
    private BeatCorrections corrections;

    @Mixin
    private SoundOptions sound;

    BeatsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        corrections.checkStretch();
        if (!isTapped) {
            corrections.checkAsked();
        }
        List<Path> songs = SongFolder.songs(files);
        if (songs.size() > 1) {
            checkAloneOptions();
            return new ManySongs(surroundings, known()).listen(songs);
        }
        one(songs.get(0));
        return Failures.DONE;
    }

    private BeatFinding finding() {
        return new BeatFinding(
                new Ear(), isTapped ? BeatFinding.Unheard.GETS_EVEN_BEATS : BeatFinding.Unheard.IS_REFUSED);
    }

    private BeatFinding.Known known() {
        return again ? BeatFinding.Known.LISTEN_AGAIN : BeatFinding.Known.READ;
    }

    private void checkAloneOptions() throws Refused {
        if (output.isPresent() || click.isPresent() || isTapped || corrections.isAsked()) {
            throw new Refused("-o, --click, --tap and corrections are for one song at a time.");
        }
    }

    private void one(Path song) throws Refused, InterruptedException {
        Path beatFile =
                output.isPresent() ? output.get() : surroundings.places().beatFile(song);
        List<Path> targets = new ArrayList<>(click.map(List::of).orElse(List.of()));
        if (click.isPresent()) {
            Targets.checkSoundFile(click.get());
        }
        targets.add(beatFile);
        Targets.checkNotRead(targets, List.of(song));
        Hearing hearing = corrected(song, beatFile, found(song, beatFile));
        if (Files.notExists(beatFile)) {
            throw new Refused("Nothing was kept, so " + song + " has no beats yet: tap again, and end with Enter.");
        }
        for (String sentence : new BeatWords(hearing).inFull()) {
            surroundings.out().println(sentence);
        }
        if (hearing.entrySeconds().isPresent()) {
            surroundings
                    .out()
                    .printf(
                            Locale.ROOT,
                            "Where the dance begins there, write \"Count 1: %.2f\" at the head of its sheet.%n",
                            hearing.entrySeconds().getAsDouble());
        }
        if (click.isEmpty()) {
            surroundings.out().println("With --click try.wav the song is written with a click on each beat.");
        }
        surroundings.out().println("The beats are in " + beatFile + ".");
        if (click.isPresent()) {
            ClickTrack.write(song, hearing.beats(), click.get());
            surroundings.err().println("Wrote " + click.get() + ": the song with its clicks.");
        }
    }

    /** Beats that were there are told apart from beats that were just heard, where the file's name does not do so. */
    private void tellThatItWasThere(Path song, Path beatFile, BeatFinding.Found found) {
        if (output.isPresent() && SongNote.in(found.comments()).isEmpty()) {
            surroundings
                    .err()
                    .println(beatFile + " was there and does not say whose beats it holds; see that they are those of "
                            + song.getFileName() + ".");
        }
    }

    private BeatFinding.Found found(Path song, Path beatFile) throws Refused {
        if (output.isPresent() && corrections.isAsked() && !Files.exists(beatFile)) {
            Path beside = BeatFile.beside(song);
            if (Files.exists(beside)) {
                return finding().find(song, beside, BeatFinding.Known.READ, done -> {});
            }
        }
        BeatFinding.Found found;
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            found = finding()
                    .find(song, beatFile, known(), done -> progress.at("Listening to " + song.getFileName(), done));
        }
        tellThatItWasThere(song, beatFile, found);
        new ProblemPrinter(surroundings.err()).tellInFull(found.problems());
        return found;
    }

    private Hearing corrected(Path song, Path beatFile, BeatFinding.Found found) throws Refused, InterruptedException {
        Hearing heard = found.hearing();
        BeatCorrections.Corrected corrected = corrections.apply(heard.beats());
        if (isTapped) {
            corrected = tapped(song, corrected);
        }
        if (corrected.comments().isEmpty()) {
            return heard;
        }
        List<String> comments = new ArrayList<>(Correction.kept(found.comments()));
        comments.addAll(corrected.comments());
        BeatFile.write(beatFile, corrected.beats(), comments);
        surroundings.err().println("Corrected the beats of " + song.getFileName() + ".");
        return new Hearing(corrected.beats(), heard.unsure(), OptionalDouble.empty());
    }

    private BeatCorrections.Corrected tapped(Path song, BeatCorrections.Corrected before)
            throws Refused, InterruptedException {
        return new Tapping(surroundings, sound)
                .play(song, before.beats(), corrections.within())
                .map(hand -> before.and(hand.beats(), hand.comments()))
                .orElse(before);
    }
}
