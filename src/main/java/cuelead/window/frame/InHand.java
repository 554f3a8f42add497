package cuelead.window.frame;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The dance and the music that lie on the stand, and how they are practised. Used on the thread of events. */
public final class InHand {
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Path> sheet = Optional.empty();
    private Optional<Path> song = Optional.empty();
    private String title = "";
    private Choices choices = Choices.USUAL;

    /** Is called after each change. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** The sheet's file; empty while there is none. */
    public Optional<Path> sheet() {
        return sheet;
    }

    /** The song that the user has chosen; empty where the one that the sheet names is meant, if it names one. */
    public Optional<Path> song() {
        return song;
    }

    /** The dance's name; empty while it is not known. */
    public String title() {
        return title;
    }

    public Choices choices() {
        return choices;
    }

    /** Takes another sheet, or the same again after it has changed; its song is that which it names. */
    public void takeSheet(Path file) {
        if (!sheet.equals(Optional.of(file))) {
            song = Optional.empty();
        }
        sheet = Optional.of(file);
        title = String.valueOf(file.getFileName());
        changed();
    }

    /** The same dance is in another file from now on, such as an edited copy. */
    public void moveSheet(Path file) {
        sheet = Optional.of(file);
        changed();
    }

    /** The sheet is read: its name is known. */
    public void name(String danceTitle) {
        if (!title.equals(danceTitle)) {
            title = danceTitle;
            changed();
        }
    }

    public void takeSong(Path file) {
        song = Optional.of(file);
        changed();
    }

    public void choose(Choices others) {
        choices = others;
        changed();
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
