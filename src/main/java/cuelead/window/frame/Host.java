package cuelead.window.frame;

import java.util.function.Consumer;

/** What a page may ask of the window that holds it. Used on the thread of events, but for {@link #tell}. */
public interface Host {
    Means means();

    InHand inHand();

    Palette palette();

    /** Tells a sentence below all pages; an empty one takes the last away. On any thread. */
    void tell(String sentence);

    /**
     * Does longer work beside the window, one piece after the other, with its progress shown and a button to break it off.
     * What refuses it is told.
     *
     * @param what is done, such as "Listening to the song"
     * @param then is given what came of it, on the thread of events; not called when it was refused or broken off
     */
    <T> void work(String what, Job<T> job, Consumer<T> then);

    /** To be called before a page plays or listens: the others fall silent. */
    void hushOthers(Page player);

    /** Goes through the dance in hand, on the page of the floor; nothing happens while there is none. */
    void practise(Course course);

    /** Whether the window has that page. */
    boolean has(PageName page);

    /** Turns to another page, one that it has. */
    void turnTo(PageName page);
}
