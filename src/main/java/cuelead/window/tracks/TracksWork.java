package cuelead.window.tracks;

import cuelead.output.Targets;
import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.TrackMaker;
import cuelead.window.frame.Job;
import cuelead.window.tracks.TracksChosen.PacedFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes practice tracks, one after the other; each of them is whole or not there.
 *
 * @param wish   the dance at full speed
 * @param chosen which tracks
 * @param files  of it, as they were shown to the user
 */
record TracksWork(Wish wish, Places places, TracksChosen chosen, List<PacedFile> files) implements Job<List<Path>> {
    TracksWork {
        files = List.copyOf(files);
    }

    @Override
    public List<Path> run(Progress progress) throws Refused, InterruptedException {
        if (!Files.isDirectory(chosen.folder())) {
            throw new Refused("There is no folder " + chosen.folder() + " any more: choose another one.");
        }
        for (PacedFile paced : files) {
            checkOlder(paced.file());
        }
        TrackMaker maker = new TrackMaker(wish, places, progress);
        List<Path> written = new ArrayList<>();
        for (PacedFile paced : files) {
            checkOlder(paced.file());
            String which = files.size() == 1 ? "" : " (" + (written.size() + 1) + " of " + files.size() + ")";
            write(maker, paced, written, (work, done) -> progress.at(work + which, done));
            written.add(paced.file());
        }
        return written;
    }

    /** A file may have come there since its name was shown. */
    private void checkOlder(Path file) throws Refused {
        if (chosen.older() == TracksChosen.Older.STAYS) {
            Targets.checkNew(file);
        }
    }

    private void write(TrackMaker maker, PacedFile paced, List<Path> before, Progress progress)
            throws Refused, InterruptedException {
        try {
            maker.make(chosen.matter().content(), paced.pace(), paced.file(), progress);
        } catch (Refused refused) {
            throw before.isEmpty()
                    ? refused
                    : new Refused(refused.getMessage() + " What was written before it is there.", refused);
        }
    }
}
