package cuelead.cli;

import cuelead.dance.Dance;
import cuelead.lesson.LessonWriter;
import cuelead.practice.Walkthrough;
import cuelead.practice.Walkthrough.PassLength;
import java.io.PrintStream;
import java.util.Locale;

/** A lesson to be read: its passes with their tempo and when each begins. */
final class LessonListing {
    private final Dance dance;
    private final Walkthrough walkthrough;
    private final PrintStream out;

    LessonListing(Dance dance, Walkthrough walkthrough, PrintStream out) {
        this.dance = dance;
        this.walkthrough = walkthrough;
        this.out = out;
    }

    void print() {
        LessonWriter lines = new LessonWriter(dance);
        out.println("Walkthrough of " + dance.header().title());
        out.println("Full speed: " + Math.round(walkthrough.full().beatsPerMinute()) + " counts a minute");
        out.println();
        out.println(" pass  begins  counts/min  what");
        double seconds = 0;
        for (PassLength pass : walkthrough.lengths()) {
            out.printf(
                    Locale.ROOT,
                    "%5d %7s %11d  %s%n",
                    pass.number(),
                    Told.minutesAndSeconds(seconds),
                    Math.round(pass.tempo().beatsPerMinute()),
                    lines.line(pass.pass()));
            seconds += pass.seconds();
        }
        out.println();
        String what = walkthrough.lesson().isWhole() ? "All of it" : "This";
        out.println(what + " takes " + Told.inWords(seconds) + ".");
    }
}
