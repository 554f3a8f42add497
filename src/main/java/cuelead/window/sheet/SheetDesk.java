package cuelead.window.sheet;

import cuelead.document.DocumentFile;
import cuelead.plan.CallWords;
import cuelead.report.Refused;
import cuelead.sheet.OwnCallEdit;
import cuelead.sheet.StepPlace;
import cuelead.window.frame.Host;
import cuelead.window.frame.PastedSheets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * A sheet that is worked on: its text through all edits, what was understood of it, and the file that keeps it. Used on the
 * thread of events; reads and writes beside it.
 */
final class SheetDesk {
    private final Host host;
    private final Executor beside;
    private final Executor events;
    private final Shown shown;
    private final Path folder;
    private final NamedSong song;
    private boolean isOpening;
    /** Of the sheet that lies here; empty while there is none, or none that could be opened. */
    private Optional<EditedCopy> copy = Optional.empty();

    private Versions versions = new Versions("");
    private Understood understood = Understood.NOTHING;
    /** Those that are not written yet. */
    private final Deque<Call> calls = new ArrayDeque<>();

    private record Call(StepPlace place, String words) {}

    /** Is told what has changed. */
    interface Shown {
        /** Another sheet is being opened; until it is there, nothing can be written. */
        void opening();

        /** Another sheet lies here, which may be an empty one. */
        void begin(String text);

        /** The text is another one, by no typing of the user's. */
        void put(String text);

        void understood(Understood now);
    }

    /**
     * Without a sheet.
     *
     * @param beside does one thing after the other, beside the thread of events
     * @param events does things on that
     */
    SheetDesk(Host host, Executor beside, Executor events, Shown shown) {
        this.host = host;
        this.beside = beside;
        this.events = events;
        this.shown = shown;
        song = new NamedSong(host);
        folder = host.means().sheets();
    }

    Understood understood() {
        return understood;
    }

    Versions versions() {
        return versions;
    }

    /** Takes what is in hand, where that is another sheet than the one that lies here, or has become one. */
    void enter() {
        Optional<Path> inHand = host.inHand().sheet();
        boolean isHere = inHand.equals(copy.map(EditedCopy::file));
        boolean isNews = copy.filter(file -> file.holds(versions.now()) && file.isWrittenElsewhere())
                .isPresent();
        if (!isOpening && (!isHere || isNews)) {
            inHand.ifPresent(this::open);
        }
    }

    /** A sheet that the user wants. */
    void take(Path file) {
        leave();
        host.tell("");
        host.inHand().takeSheet(file);
        open(file);
    }

    /** The text of one. */
    void take(String text) {
        try {
            take(new PastedSheets(folder).keep(text));
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }

    private void open(Path file) {
        isOpening = true;
        copy = Optional.empty();
        calls.clear();
        song.begin();
        versions = new Versions("");
        shown.opening();
        beside.execute(() -> {
            try {
                String text = DocumentFile.read(file).text();
                EditedCopy opened = new EditedCopy(folder, file, text);
                events.execute(() -> opened(file, Optional.of(opened), text));
            } catch (Refused refused) {
                host.tell(refused.getMessage());
                events.execute(() -> opened(file, Optional.empty(), ""));
            }
        });
    }

    /** Unless the user wants another one by now. */
    private void opened(Path file, Optional<EditedCopy> opened, String text) {
        if (isOpening && isInHand(file)) {
            isOpening = false;
            copy = opened;
            versions = new Versions(text);
            shown.begin(text);
            read();
        }
    }

    private boolean isInHand(Path file) {
        return host.inHand().sheet().equals(Optional.of(file));
    }

    /** The user typed. */
    void typed(String text) {
        versions.typed(text);
    }

    /** For a while nothing was typed. */
    void pause() {
        versions.pause();
        read();
        if (copy.isPresent()) {
            copy.ifPresent(file -> keep(file, versions.now()));
        } else if (!versions.now().isBlank() && !isOpening) {
            write();
        }
    }

    /** What is typed where there is no sheet becomes one. */
    private void write() {
        try {
            Path file = new PastedSheets(folder).keep(versions.now());
            copy = Optional.of(new EditedCopy(folder, file, versions.now()));
            host.inHand().takeSheet(file);
            read();
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }

    void undo() {
        pause();
        changed(versions.undo());
    }

    void redo() {
        pause();
        changed(versions.redo());
    }

    private void changed(String text) {
        shown.put(text);
        pause();
    }

    /** A step is to be called otherwise, as {@link OwnCallEdit}. */
    void call(StepPlace place, String words) {
        calls.add(new Call(place, words));
        if (calls.size() == 1) {
            write(calls.element());
        }
    }

    private void write(Call call) {
        String text = versions.now();
        beside.execute(() -> {
            try {
                String edited = OwnCallEdit.of(text, call.place(), call.words(), CallWords::of);
                events.execute(() -> written(call, text, () -> edited(edited)));
            } catch (Refused refused) {
                events.execute(() -> written(call, text, () -> refused(refused)));
            }
        });
    }

    /** Where the text has changed meanwhile, it is written into the other one. */
    private void written(Call call, String before, Runnable then) {
        if (!call.equals(calls.peek())) {
            return;
        }
        if (versions.now().equals(before)) {
            calls.remove();
            then.run();
        }
        if (!calls.isEmpty()) {
            write(calls.element());
        }
    }

    private void edited(String text) {
        host.tell("");
        versions.edited(text);
        changed(text);
    }

    private void refused(Refused refused) {
        host.tell(refused.getMessage());
        shown.understood(understood);
    }

    /** Reads the text again, and shows what came of it unless it has changed meanwhile. */
    private void read() {
        String text = versions.now();
        beside.execute(() -> {
            Understood now = Understood.of(text);
            events.execute(() -> read(now));
        });
    }

    private void read(Understood now) {
        if (!now.text().equals(versions.now())) {
            return;
        }
        understood = now;
        shown.understood(now);
        tellStand();
    }

    private void tellStand() {
        copy.filter(file -> isInHand(file.file())).ifPresent(file -> {
            song.follow(understood.song(), file.chosen(), file.file());
            host.inHand()
                    .understood(
                            understood.title(String.valueOf(file.file().getFileName())),
                            understood.song(),
                            understood.dance().isPresent());
        });
    }

    private void keep(EditedCopy file, String text) {
        Path before = file.file();
        beside.execute(() -> {
            try {
                if (file.keep(text)) {
                    events.execute(() -> moved(before, file.file()));
                }
            } catch (Refused refused) {
                host.tell(refused.getMessage());
            }
        });
    }

    /** The copy stands in for the file from now on, and keeps its song. */
    private void moved(Path from, Path to) {
        if (!isInHand(from)) {
            return;
        }
        host.inHand().moveSheet(to);
        tellStand();
        host.tell("Your changes are kept in an edited copy, " + to + "; " + from.getFileName() + " stays as it is.");
    }

    /** Keeps what is not kept yet, before anything else happens. */
    void leave() {
        if (copy.isEmpty()) {
            return;
        }
        EditedCopy file = copy.get();
        Path before = file.file();
        try {
            if (file.keep(versions.now())) {
                moved(before, file.file());
            }
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }
}
