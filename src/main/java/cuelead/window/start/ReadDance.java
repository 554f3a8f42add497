package cuelead.window.start;

import cuelead.dance.DanceCheck;
import cuelead.listing.DanceFacts;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetFile;
import cuelead.window.frame.FoundProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A sheet as it was understood.
 *
 * @param title    its name, or that of its file
 * @param facts    what is danced, in a sentence
 * @param findings what is wrong or doubtful, each in its sentence, those of a line with its number before it
 * @param song     the one that it names; may be empty
 * @param tempo    that it states, in beats a minute
 * @param isDance  whether it can be practised
 */
record ReadDance(
        String title, String facts, List<String> findings, String song, OptionalDouble tempo, boolean isDance) {
    ReadDance {
        findings = List.copyOf(findings);
    }

    /** Reads and checks a file; one that is no sheet is told among the findings. */
    static ReadDance read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            ReadSheet read = SheetFile.read(file);
            List<Problem> problems = new ArrayList<>(read.problems());
            read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, file.toString())));
            return new ReadDance(
                    read.dance()
                            .map(dance -> dance.header().title())
                            .filter(title -> !title.isBlank())
                            .orElse(name),
                    read.dance().map(DanceFacts::of).orElse("No dance was found in it."),
                    problems.stream().map(FoundProblem::told).toList(),
                    read.dance().map(dance -> dance.header().song()).orElse(""),
                    read.dance().map(dance -> dance.header().statedTempo()).orElse(OptionalDouble.empty()),
                    read.dance().isPresent());
        } catch (Refused refused) {
            return new ReadDance(
                    name, "It cannot be read.", List.of(refused.getMessage()), "", OptionalDouble.empty(), false);
        }
    }
}
