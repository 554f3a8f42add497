package cuelead.window.tracks;

import cuelead.steer.TrackMaker;
import cuelead.window.frame.Course;

/** What a practice track holds. */
enum Matter {
    SONG_AND_CALLS("The song with its calls", 'S', Course.TO_THE_SONG, TrackMaker.Content.DANCE, ""),
    CLICKS_AND_CALLS("Clicks with the calls", 'C', Course.TO_CLICKS, TrackMaker.Content.DANCE, "clicks"),
    WALKTHROUGH(
            "A walkthrough, section by section",
            'W',
            Course.WALKTHROUGH,
            TrackMaker.Content.WALKTHROUGH,
            "walkthrough"),
    SONG_ALONE("The song alone", 'A', Course.TO_THE_SONG, TrackMaker.Content.SONG, "song only");

    private final String words;
    private final char mnemonic;
    private final Course course;
    private final TrackMaker.Content content;
    private final String inName;

    Matter(String words, char mnemonic, Course course, TrackMaker.Content content, String inName) {
        this.words = words;
        this.mnemonic = mnemonic;
        this.course = course;
        this.content = content;
        this.inName = inName;
    }

    String words() {
        return words;
    }

    char mnemonic() {
        return mnemonic;
    }

    Course course() {
        return course;
    }

    TrackMaker.Content content() {
        return content;
    }

    /** What tells its files from others; may be empty. */
    String inName() {
        return inName;
    }

    /** Whether there is nothing to be written without a song. */
    boolean needsSong() {
        return course == Course.TO_THE_SONG;
    }
}
