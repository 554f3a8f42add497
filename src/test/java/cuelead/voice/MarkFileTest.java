package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Problem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkFileTest {
    @Test
    void whatIsPrintedReadsBack() {
        Map<String, Mark> marks = Map.of(
                "rock.wav", new Mark(0.842, 1.93, Mark.By.HEARING),
                "a = b.mp3", new Mark(0, 0.5, Mark.By.EAR),
                "kick ball change.flac", new Mark(1.25, 2.2, Mark.By.EAR));
        MarkFile.Read read = MarkFile.of("marks.txt", MarkFile.print(marks));
        assertEquals(marks, read.marks());
        assertEquals(List.of(), read.problems());
    }

    @Test
    void commentsAndEmptyLinesSayNothing() {
        MarkFile.Read read = MarkFile.of("m", "\ufeff# rock.wav = 1 of 2\n\n  # x\n touch.wav=0.1 of 1   by  ear \n");
        assertEquals(Map.of("touch.wav", new Mark(0.1, 1, Mark.By.EAR)), read.marks());
        assertEquals(List.of(), read.problems());
    }

    @ParameterizedTest
    @CsvSource({
        "rock.wav 0.8, 1, There is no \"=\" in this line.",
        "= 0.8 of 1, 1, No file stands before the \"=\".",
        "rock.wav = soon, 11, Behind the \"=\" stands no mark.",
        "rock.wav = 0.8, 11, Behind the \"=\" stands no mark.",
        "rock.wav = 0.8 of 1 by hand, 11, Behind the \"=\" stands no mark.",
        "rock.wav = 1.2 of 1, 12, The mark lies behind the end of the recording."
    })
    void aMistakeIsToldWithItsLineAndColumn(String line, int column, String sentence) {
        MarkFile.Read read = MarkFile.of("marks.txt", "# head\n" + line + "\n");
        assertEquals(Map.of(), read.marks());
        Problem problem = read.problems().get(0);
        assertEquals(List.of(2, column), List.of(problem.line(), problem.column()));
        assertEquals(sentence, problem.sentence());
    }

    @Test
    void theFirstOfTwoMarksCounts() {
        MarkFile.Read read = MarkFile.of("m", "r.wav = 0.1 of 1\nr.wav = 0.2 of 1\n");
        assertEquals(0.1, read.marks().get("r.wav").centreSeconds());
        assertEquals(2, read.problems().get(0).line());
    }
}
