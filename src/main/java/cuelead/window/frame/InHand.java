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
    private String namedSong = "";
    private boolean isDance;
    private Choices choices;

    /** As it was left the last time. */
    public InHand(Session last) {
        choices = last.choices();
        last.recents().stream().findFirst().ifPresent(recent -> {
            sheet = Optional.of(recent.sheet());
            song = recent.song();
            title = recent.title();
        });
    }

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

    /** Whether there is something to dance to but clicks. */
    public boolean hasSong() {
        return song.isPresent() || !namedSong.isEmpty();
    }

    /** The song that the sheet names; may be empty. */
    public String namedSong() {
        return namedSong;
    }

    /** Whether the sheet was read and holds a dance. */
    public boolean isDance() {
        return isDance;
    }

    public Choices choices() {
        return choices;
    }

    /** Takes another sheet, or the same again after it has changed; its song is that which it names. */
    public void takeSheet(Path file) {
        if (!sheet.equals(Optional.of(file))) {
            song = Optional.empty();
            choices = choices.atOwnSpeed();
        }
        sheet = Optional.of(file);
        title = String.valueOf(file.getFileName());
        namedSong = "";
        isDance = false;
        changed();
    }

    /** The same dance is in another file from now on, such as an edited copy. */
    public void moveSheet(Path file) {
        sheet = Optional.of(file);
        changed();
    }

    /**
     * The sheet is read.
     *
     * @param danceTitle    its name
     * @param songInSheet   the song that it names; may be empty
     * @param canBePractised whether a dance was found in it
     */
    public void understood(String danceTitle, String songInSheet, boolean canBePractised) {
        boolean isNews = !title.equals(danceTitle) || !namedSong.equals(songInSheet) || isDance != canBePractised;
        title = danceTitle;
        namedSong = songInSheet;
        isDance = canBePractised;
        if (isNews) {
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
