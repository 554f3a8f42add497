package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.report.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a sheet.
 *
 * @param dance    the dance as far as it was understood; empty when the text is no step sheet. Where a problem is an
 *                 error, a hold stands for each action that was not understood
 * @param problems in the order of the sheet
 * @param notes    what the sheet says beside the dance
 */
public record ReadSheet(Optional<Dance> dance, List<Problem> problems, SheetNotes notes) {
    public ReadSheet {
        problems = List.copyOf(problems);
    }

    public boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }
}
