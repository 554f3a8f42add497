package cuelead.window.frame;

/** Ways to go through a dance. */
public enum Course {
    /** All of it with its song. */
    TO_THE_SONG,
    /** All of it to clicks. */
    TO_CLICKS,
    /** Section by section, slowly at first; with its song at the end, where it has one. */
    WALKTHROUGH
}
