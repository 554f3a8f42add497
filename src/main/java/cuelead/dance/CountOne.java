package cuelead.dance;

/** Where the first count of the dance falls in the song. */
public sealed interface CountOne {
    /** So many counts after the song's first downbeat. */
    record Intro(int counts) implements CountOne {}

    /** At the beat nearest to this time. */
    record AtSeconds(double songSeconds) implements CountOne {}
}
