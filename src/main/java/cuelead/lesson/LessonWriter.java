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
        lesson.dancedPasses().forEach(pass -> lines.add(line(pass)));
        return String.join("\n", lines) + "\n";
    }

    private List<String> head() {
        return List.of(
                "# Walkthrough of " + dance.header().title().replace('\n', ' '),
                "# One pass a line; its parts may stand in any order. Change, move, add or delete lines as you like.",
                "#   what:      " + pieces.examples(" | "),
                "#   how fast:  walk (65 %) | steady (80 %) | full | a share such as 70 % | a tempo such as 72",
                "#   how often: once | twice | 3 times",
                "#   to what:   clicks | music",
                "#   calls:     calls words | calls figures | calls sections | calls changes | no calls;",
                "#              \"fading\" beside it: fewer from wall to wall",
                "# What a line leaves out is: walk to clicks, full speed to music; once; clicks; calls words.",
                "");
    }

    /** One pass. */
    public String line(Pass pass) {
        List<String> fields = new ArrayList<>();
        fields.add(pieces.written(pass.piece()));
        fields.add(written(pass.pace()));
        fields.add(times(pass.times()));
        fields.add(pass.over() == Pass.Over.CLICKS ? "clicks" : "music");
        if (pass.level() != CallLevel.WORDS) {
            fields.add(
                    pass.level() == CallLevel.NONE
                            ? "no calls"
                            : "calls " + pass.level().word());
        }
        if (pass.fading() == Fading.WALL_BY_WALL) {
            fields.add("calls fading");
        }
        return String.join(", ", fields);
    }

    private static String times(int times) {
        return switch (times) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> times + " times";
        };
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
