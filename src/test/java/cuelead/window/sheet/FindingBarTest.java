package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingBarTest {
    private final List<Integer> chosen = new ArrayList<>();
    private final FindingBar bar = new FindingBar(chosen::add);

    private static Finding finding(int line) {
        return new Finding(Problem.Severity.WARNING, line, "At " + line + ".");
    }

    @Test
    void stepsGoRoundFromLineToLine() {
        bar.show(List.of(finding(0), finding(4), finding(9)), true);
        bar.step(1);
        bar.step(1);
        bar.step(1);
        bar.step(-1);
        assertEquals(List.of(4, 9, 1, 9), chosen);
    }

    @Test
    void aStepGoesOnFromTheLineThatIsLookedAt() {
        bar.show(List.of(finding(2), finding(4), finding(9)), true);
        bar.goTo(4);
        bar.goTo(5);
        bar.step(1);
        assertEquals(List.of(9), chosen);
    }

    @Test
    void whatIsLookedAtStaysWhenOthersAreMended() {
        bar.show(List.of(finding(2), finding(4), finding(9)), true);
        bar.goTo(4);
        bar.show(List.of(finding(4), finding(9)), true);
        bar.step(1);
        assertEquals(List.of(9), chosen);
        bar.show(List.of(), true);
        bar.step(1);
        assertEquals(List.of(9), chosen);
    }
}
