package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.EasyOption;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Easier ways in the wordings of the trade ("Non-turning option", "Easy option", "Alternatively": common practice). */
class EasyOptionsTest {
    private static final String STEPS = """
            Harbour Steps
            16 count, 2 wall line dance

            Section 1
            1-2 Rock R forward, recover L
            3-4 Turn 1/2 R stepping R forward, turn 1/2 R stepping L back%s
            5-6 Rock R back, recover L
            7-8 Step R forward, pivot 1/2 L
            %s
            Section 2
            1-4 Step R to side, step L behind R, step R to side, touch L beside R
            5-8 Step L to side, step R behind L, step L to side, touch R beside L
            %s
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "' (easy option: walk R, L)'",
                "' [Non-turning option: walk back R, L]'",
                "' (or walk R, L)'",
                "' (beginners: walk R, L)'",
                "' (walk R, L for an easier option)'",
                "' - easy option: walk R, L'",
                ". Alternatively walk R, L",
                "' {easier: step R back, step L beside R}'"
            })
    void anOptionOnItsLineIsForTheCountsOfItsLine(String words) {
        Dance dance = dance(STEPS.formatted(words, "", ""));
        assertEquals(List.of("S1 3-4 R L"), told(dance));
        assertTrue(dance.isDanced(dance.options().get(0)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Easy option for counts 3-4: walk R, L           | S1 3-4 R L",
                "Option: counts 3 to 4 could be walk R, L        | S1 3-4 R L",
                "Easier: walk R, L on counts 3-4                 | S1 3-4 R L",
                "* Non-turning option: replace the turn with walk R, L | S1 3-4 R L",
                "Easy option for the pivot: step R, step L       | S1 7-8 R L",
                "Option: rocking chair on R                      | S1 5-8 R L R L",
                "Easy option for counts 9-12: walk R, L, R, touch L | S2 1-4 R L R L",
                "Easy option: replace the vine with a step touch R, step touch L | S2 1-4 R L L R",
                "Easy option for the vine R: walk R, L, R, touch L | S2 1-4 R L R L",
            })
    void anOptionBelowIsForTheCountsThatItNames(String line, String told) {
        String mark = line.startsWith("*") ? " *" : "";
        assertEquals(List.of(told), told(dance(STEPS.formatted(mark, line, ""))));
    }

    /** It is kept, so nobody is told that it is left out. */
    @Test
    void anOptionIsNotBlamed() {
        String below = "        Non-turning option: rocking chair on R";
        assertEquals(
                List.of(),
                SheetReader.read("sheet.txt", STEPS.formatted("", below, "")).problems());
    }

    @Test
    void whatTellsNoStepsIsKeptInItsWords() {
        Dance dance = dance(STEPS.formatted("", "", "Easy option for counts 5-8: whatever the floor allows"));
        EasyOption option = dance.options().get(0);
        assertEquals(
                "S2 5-8 whatever the floor allows", option.section() + " " + option.counts() + " " + option.words());
        assertEquals(List.of(), option.steps());
        assertFalse(dance.isDanced(option));
    }

    /** A class would part if some of it ended on another foot, or facing another wall. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"' (easy option: step R, touch L)'", "' (option: step R, pivot 1/2 L)'"})
    void anOptionThatEndsOtherwiseIsNotDanced(String words) {
        Dance dance = dance(STEPS.formatted(words, "", ""));
        assertEquals(1, dance.options().size());
        assertFalse(dance.isDanced(dance.options().get(0)));
        assertEquals(feet(dance), feet(dance.easy()));
        assertEquals(
                List.of("NOTE easy_option"),
                DanceCheck.check(dance, "sheet.txt").stream()
                        .map(problem -> problem.severity() + " " + problem.kind())
                        .toList());
    }

    @Test
    void theEasierWayIsDancedInThePlaceOfTheSteps() {
        Dance full = dance(STEPS.formatted(" (easy option: walk R, L)", "", ""));
        Dance easy = full.easy();
        assertEquals(full.counts(), easy.counts());
        assertEquals(
                full.parts().get(0).netTurn().degrees(),
                easy.parts().get(0).netTurn().degrees() + 360);
        assertEquals(feet(full), feet(easy));
        Section first = easy.parts().get(0).sections().get(0);
        assertTrue(first.figures().stream().allMatch(run -> run.stepsOf(first).size() == run.steps()));
    }

    @Test
    void aSheetWithoutOptionsHasNone() {
        assertEquals(
                List.of(),
                dance(STEPS.formatted(" (travelling back)", "Easy does it, smile!", ""))
                        .options());
    }

    /** What is written is found again at the same counts. */
    @Test
    void optionsAreWrittenAndReadBack() {
        String below = "Easy option for counts 7-8: whatever the floor allows";
        Dance dance = dance(STEPS.formatted(" (easy option: walk R, L)", below, "Option: counts 5-8 vine L, touch R"));
        Dance again = dance(SheetWriter.write(dance));
        assertEquals(3, dance.options().size());
        assertEquals(told(dance), told(again));
        assertEquals(
                dance.options().stream().map(EasyOption::words).toList(),
                again.options().stream().map(EasyOption::words).toList());
    }

    private static Dance dance(String text) {
        ReadSheet read = SheetReader.read("sheet.txt", text);
        assertFalse(read.hasErrors(), read.problems().toString());
        return read.dance().orElseThrow();
    }

    private static List<String> told(Dance dance) {
        return dance.options().stream()
                .map(option -> option.section() + " " + option.counts() + " " + feet(option.steps()))
                .toList();
    }

    private static String feet(List<Step> steps) {
        return steps.stream()
                .flatMap(step -> step.foot().stream())
                .map(foot -> foot.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT))
                .collect(Collectors.joining(" "));
    }

    private static String feet(Dance dance) {
        return feet(
                dance.sections().flatMap(section -> section.steps().stream()).toList());
    }
}
