package cuelead.window.song;

import cuelead.dance.Dance;
import cuelead.practice.Progress;
import cuelead.practice.SongPlace;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.sheet.SheetFile;
import cuelead.song.Ear;
import cuelead.song.Hearing;
import cuelead.song.TapRun;
import cuelead.song.Tapped;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads and hears songs beside the window. Used on the thread of events. */
final class SongLoading {
    private static final String LISTENING = "Listening to the song";

    private final Host host;
    private final Ears ears = new Ears();

    SongLoading(Host host) {
        this.host = host;
    }

    /** The ear is made when it is needed first, for that takes its time. On any thread. */
    private static final class Ears {
        private Optional<Ear> one = Optional.empty();

        synchronized Ear ear() {
            Ear ear = one.orElseGet(Ear::new);
            one = Optional.of(ear);
            return ear;
        }
    }

    /** The song that lies on the stand: the one that was chosen, else the one that the sheet names. */
    Optional<Path> wanted() throws Refused {
        InHand inHand = host.inHand();
        boolean isNamed = inHand.song().isEmpty()
                && inHand.sheet().isPresent()
                && !inHand.namedSong().isEmpty();
        return isNamed
                ? Optional.of(SongPlace.find(
                        inHand.namedSong(),
                        inHand.sheet().get(),
                        host.means().places().working()))
                : inHand.song();
    }

    /** Opens a song and the dance on the stand. */
    void open(Path file, Consumer<SongInHand> then) {
        Optional<Path> sheet = host.inHand().sheet();
        Wish.Way way = host.inHand().choices().way();
        host.work(
                LISTENING,
                progress -> new SongInHand(
                        LoadedSong.load(file, host.means().places(), ears.ear(), progress), dance(sheet, way)),
                then);
    }

    /** Reads the dance on the stand anew. */
    void dance(Consumer<Optional<Dance>> then) {
        Optional<Path> sheet = host.inHand().sheet();
        Wish.Way way = host.inHand().choices().way();
        host.work("Reading the sheet", progress -> dance(sheet, way), then);
    }

    /** What is wrong with a sheet is told by its own page. */
    private static Optional<Dance> dance(Optional<Path> sheet, Wish.Way way) {
        try {
            Optional<Dance> read =
                    sheet.isPresent() ? SheetFile.read(sheet.get()).dance() : Optional.empty();
            return read.map(dance -> way == Wish.Way.EASIER ? dance.easy() : dance);
        } catch (Refused unreadable) {
            return Optional.empty();
        }
    }

    void outline(Path file, Consumer<Outline> then) {
        host.work("Reading the song", progress -> Outline.of(file), then);
    }

    /** @param then is given nothing where there is no steady beat */
    void hearAgain(Path file, Consumer<Optional<Hearing>> then) {
        host.work(LISTENING, progress -> hear(file, progress), then);
    }

    private Optional<Hearing> hear(Path file, Progress progress) throws Refused {
        return ears.ear().listen(file, done -> progress.at(LISTENING, done));
    }

    void carry(TapRun taps, Path file, Consumer<Tapped> then) {
        host.work("Carrying your beat through the song", progress -> taps.through(file, ears.ear()), then);
    }
}
