package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings.Fading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Writes a lesson as text that {@link LessonReader} reads back to the same lesson, and that says how to change it. */
public final class LessonWriter {
    private final PieceWords pieces;
    private final Dance dance;

    public LessonWriter(Dance dance) {
        this.dance = dance;
        pieces = new PieceWords(dance);
    }

    /** The whole text, a line a pass below a head that explains the words. */
    public String write(Lesson lesson) {
        List<String> lines = new ArrayList<>(head());
        lesson.passes().forEach(pass -> lines.add(line(pass)));
        return String.join("\n", lines) + "\n";
    }

    private List<String> head() {
        return List.of(
                "# Walkthrough of " + dance.header().title().replace('\n', ' '),
                "# One pass a line: what, how fast, how often, over clicks or music, which calls. Change it as you like.",
                "#   what:     section "
                        + pieces.written(new Piece.OneSection(1)).substring("section ".length())
                        + " | sections 1 to 3 | wall 2 | tag of wall 2 | restart of wall 3 | dance",
                "#   how fast: walk (65 %) | steady (80 %) | full | any share such as 72 % | any tempo such as 96 bpm",
                "#   calls:    words | figures | sections | changes | none; \"fading\" behind it: fewer from wall to wall",
                "");
    }

    /** One pass. */
    public String line(Pass pass) {
        List<String> fields = new ArrayList<>();
        fields.add(pieces.written(pass.piece()));
        fields.add(written(pass.pace()));
        fields.add(pass.times() == 1 ? "once" : pass.times() + " times");
        fields.add(pass.over() == Pass.Over.CLICKS ? "clicks" : "music");
        if (pass.level() != CallLevel.WORDS || pass.fading() != Fading.STEADY) {
            fields.add(calls(pass));
        }
        return String.join(", ", fields);
    }

    private static String calls(Pass pass) {
        return "calls " + pass.level().word() + (pass.fading() == Fading.WALL_BY_WALL ? " fading" : "");
    }

    /** As a lesson's text has it: "walk", "72 %", "96 bpm". */
    public static String written(Pace pace) {
        for (PaceName name : PaceName.values()) {
            if (name.pace().equals(pace)) {
                return name.word();
            }
        }
        if (pace instanceof Pace.Share share) {
            return number(BigDecimal.valueOf(share.ofFull()).movePointRight(2)) + " %";
        }
        return number(BigDecimal.valueOf(((Pace.Beats) pace).tempo().beatsPerMinute())) + " bpm";
    }

    /** To the last digit. */
    private static String number(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }
}
