package cuelead.cli;

import cuelead.dance.Dance;
import cuelead.lesson.LessonWriter;
import cuelead.lesson.PieceWords;
import cuelead.plan.LeftOut;
import cuelead.practice.Walkthrough;
import cuelead.practice.Walkthrough.PassLength;
import cuelead.report.Refused;
import cuelead.steer.Told;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A lesson to be read: its passes with their tempo and when each begins. */
final class LessonListing {
    private static final Set<LeftOut.Reason> WITHOUT_TIME =
            EnumSet.of(LeftOut.Reason.NO_ROOM, LeftOut.Reason.TOO_LATE, LeftOut.Reason.BEFORE_THE_MUSIC);

    private final Dance dance;
    private final Walkthrough walkthrough;
    private final PrintStream out;

    LessonListing(Dance dance, Walkthrough walkthrough, PrintStream out) {
        this.dance = dance;
        this.walkthrough = walkthrough;
        this.out = out;
    }

    void print() throws Refused {
        LessonWriter lines = new LessonWriter(dance);
        out.println("Walkthrough of " + dance.header().title());
        out.println("Full speed: " + Math.round(walkthrough.full().beatsPerMinute()) + " beats a minute");
        out.println();
        out.println(" pass  begins  beats/min  what");
        double seconds = 0;
        for (PassLength pass : walkthrough.lengths()) {
            out.printf(
                    Locale.ROOT,
                    "%5d %7s %10d  %s%n",
                    pass.number(),
                    Told.minutesAndSeconds(seconds),
                    Math.round(pass.tempo().beatsPerMinute()),
                    lines.line(pass.pass()) + heading(pass));
            seconds += pass.seconds();
        }
        out.println();
        String what = walkthrough.lesson().isWhole() ? "All of it" : "This";
        out.println(what + " takes " + Told.inWords(seconds) + ".");
        printLeftOut();
    }

    private String heading(PassLength pass) {
        String heading = new PieceWords(dance).heading(pass.pass().piece());
        return heading.isEmpty() ? "" : "  (" + heading + ")";
    }

    /** Words for which others are said are missed by nobody. */
    private void printLeftOut() throws Refused {
        List<String> lines = new ArrayList<>();
        for (PassLength pass : walkthrough.lengths()) {
            List<LeftOut> missed = walkthrough.leftOut(pass.number()).stream()
                    .filter(out -> WITHOUT_TIME.contains(out.reason()))
                    .toList();
            if (!missed.isEmpty()) {
                lines.add(String.format(Locale.ROOT, "%5d  %s", pass.number(), LeftOutListing.withPlaces(missed)));
            }
        }
        if (!lines.isEmpty()) {
            out.println();
            out.println("Words that there is no time to say:");
            lines.forEach(out::println);
        }
    }
}
