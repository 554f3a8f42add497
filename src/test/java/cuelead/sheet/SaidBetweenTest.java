package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What instructors say between the lines of a dance is no step of it, wherever it stands (common practice, no source). */
class SaidBetweenTest {
    private static final String DANCE = OneDance.plain();
    private static final String DANCED = danced(DANCE);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Without turning: replace the two pivots by four walks on the spot.",
                "If a kick is too much for the knee, touch the left toe forward instead. Nobody is looking.",
                "If you can't do the pivot turns, do a second rocking chair",
                "No turn version: walk R, L, R, L",
                "Those with bad knees may step instead of kick",
                "Fancy a spin? Replace the vine right with a full turn right.",
                "You may swap the jazz box for a box step",
                "Arms: swing both arms to the right on the vine",
                "On the vine, look right; on the way back, look left",
                "Clap your hands above your head on counts 4 and 8",
                "Keep the right foot close to the left",
                "Watch out: the weight stays on the left foot!",
                "Take care on the turns, the floor may be slippery",
                "Now your right foot is free to start again",
                "The touch on 8 takes no weight",
                "The last two counts turn you three quarters to the left in all",
                "After the second pivot you face the 3 o'clock wall",
                "My grandmother always said: left foot first, ask questions later.",
                "The tune is played at 112 beats a minute; slow it down to 96 for practice.",
                "Teach the pivots first, slowly, then add the rest",
                "Common mistake: people step on the touch and end up on the wrong foot",
                "Push the hips right and left as you step",
                "A scuff may be danced in place of each touch",
                "Contra: can be danced in two lines facing each other",
                "It goes right, left, right, left",
                "Heel, toe, heel, toe: that's how it feels",
                "Section 3 is the tricky one",
                "Enjoy!",
                "There are no tags or restarts",
                "See you on Tuesday, and bring a cup!"
            })
    void remark(String words) {
        for (String sheet : places(words)) {
            assertEquals(List.of(), Blamed.in(SheetReader.read("sheet.txt", sheet)), sheet);
            assertEquals(DANCED, danced(sheet), sheet);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Return to count 01.",
                "Go back to 1",
                "Do it all over till the band quits.",
                "Round again, next wall is 9:00.",
                "And then it all starts again on the new wall.",
                "> > again",
                "Recommence.",
                "Once more from the top!",
                "END OF SHEET - BEGIN AGAIN",
                "Repeat 1-32",
                "Repeat steps 1 to 32 to end of music",
                "Once you get to count 32, you start again at count 1",
                "Back to square one"
            })
    void again(String words) {
        String sheet = DANCE.replace("Begin again", words);
        assertEquals(List.of(), Blamed.in(SheetReader.read("sheet.txt", sheet)), sheet);
        assertEquals(DANCED, danced(sheet), sheet);
    }

    /** Behind the dance, between two sections, among the lines of one, and below a heading. */
    private static List<String> places(String words) {
        List<String> sheets = new ArrayList<>();
        sheets.add(DANCE + words + "\n");
        sheets.add(DANCE.replace("\n[9-16]", "\n" + words + "\n\n[9-16]"));
        sheets.add(DANCE.replace("5-6 Rock L back", words + "\n5-6 Rock L back"));
        sheets.add(DANCE.replace("\n1-2 Rock R forward", "\n" + words + "\n1-2 Rock R forward"));
        return sheets;
    }

    private static String danced(String sheet) {
        List<String> rows = new ArrayList<>();
        for (String row :
                SheetDump.rows(SheetReader.read("sheet.txt", sheet).dance().orElseThrow())) {
            rows.add(row.substring(0, row.lastIndexOf('\t')));
        }
        return String.join("\n", rows);
    }
}
