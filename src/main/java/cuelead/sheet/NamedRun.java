package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.FigureRun;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a dance has a figure that is named beside it: "for the rolling vine".
 *
 * @param section the section that has it
 * @param steps   its steps there
 */
record NamedRun(Section section, List<Step> steps) {

    /**
     * The last of its kind above a line, else the first below it; empty where the words name no figure of the dance.
     *
     * @param line 1-based
     */
    static Optional<NamedRun> of(Dance dance, String words, int line) {
        Optional<String> id = figureIn(words);
        if (id.isEmpty()) {
            return Optional.empty();
        }
        List<NamedRun> runs = dance.sections()
                .flatMap(section -> section.figures().stream()
                        .filter(run -> isKind(run, id.get()))
                        .map(run -> new NamedRun(section, run.stepsOf(section))))
                .toList();
        return runs.stream()
                .filter(run -> run.line() <= line)
                .max(Comparator.comparingInt(NamedRun::line))
                .or(() -> runs.stream().findFirst());
    }

    private static Optional<String> figureIn(String words) {
        List<Term> terms = Vocabulary.STANDARD.danced(Scanner.tokens(words, 0));
        return new ProseParser(Vocabulary.STANDARD, Problems.unheard(), 1, terms)
                .phrases().stream()
                        .flatMap(phrase -> phrase.figure().stream())
                        .map(call -> call.row().figure().id())
                        .findFirst();
    }

    /** "The vine" may be one with a quarter turn. */
    private static boolean isKind(FigureRun run, String id) {
        return first(run.figure().id()).equals(first(id));
    }

    private static String first(String id) {
        int end = id.indexOf('_');
        return end < 0 ? id : id.substring(0, end);
    }

    private int line() {
        return steps.get(steps.size() - 1).line();
    }
}
