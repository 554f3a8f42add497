package cuelead.steer;

import cuelead.dance.Dance;
import cuelead.lesson.LessonWriter;
import cuelead.lesson.Pace;
import cuelead.lesson.Pass;
import cuelead.lesson.Piece;
import cuelead.lesson.PieceWords;
import cuelead.practice.Delays;
import cuelead.practice.Heard;
import cuelead.practice.LiveWalkthrough;
import cuelead.practice.LiveWalkthrough.Now;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.time.Tempo;
import java.util.Optional;

/** Gives a user's orders to the lesson that is danced, and says what was done. */
public final class LessonSteersman implements Steered {
    private final LiveWalkthrough lesson;
    private final PieceWords pieces;
    private final Tempo full;
    private final Wish wish;
    private final DelaySteps delays;

    /**
     * @param full counts a minute at full speed
     * @param wish what the lesson was made for
     */
    LessonSteersman(LiveWalkthrough lesson, Dance dance, Tempo full, Wish wish) {
        this.lesson = lesson;
        pieces = new PieceWords(dance);
        this.full = full;
        this.wish = wish;
        delays = new DelaySteps(wish.callsGo(), lesson.delays(), lesson::delays);
    }

    @Override
    public Heard heard() {
        return lesson.heard();
    }

    @Override
    public void tick() throws Refused {
        lesson.tick();
    }

    /** Its rounds are made before they are heard. */
    @Override
    public void getReady() {}

    @Override
    public boolean hasEnded() {
        return lesson.hasEnded();
    }

    /** {@code Pass 5 of 18: sections 1 to 2, walk (68 a minute), time 2 of 3}. */
    @Override
    public PassLines pass() throws Refused {
        Now now = lesson.now();
        Pass wanted = now.wanted();
        String times = wanted.times() == 1 ? "" : ", time " + now.repeat() + " of " + wanted.times();
        return new PassLines(
                now.pass(),
                "Pass " + now.pass() + " of " + now.passes(),
                told(wanted),
                times,
                next(now),
                Told.minutesAndSeconds(now.secondsLeft()) + " left");
    }

    /** In a whole wall it matters more what comes at its end. */
    private String next(Now now) {
        if (now.wanted().piece() instanceof Piece.Wall || now.wanted().piece() instanceof Piece.WholeDance) {
            return "";
        } else if (now.repeat() < now.wanted().times()) {
            return now.repeat() + 1 == now.wanted().times() ? "the last time" : "again";
        }
        return now.next().map(this::told).orElse("the end");
    }

    private String told(Pass pass) {
        return pieces.written(pass.piece()) + ", " + told(pass.pace());
    }

    private String told(Pace pace) {
        return LessonWriter.written(pace) + " (" + Math.round(pace.at(full).beatsPerMinute()) + " beats a minute)";
    }

    @Override
    public PlayState state() {
        return new PlayState(
                lesson.isPaused() ? PlayState.Motion.PAUSED : PlayState.Motion.PLAYING,
                lesson.heard().settings(),
                Heard.Repeating.NOTHING,
                wish.dip().on(wish.callsGo()),
                0,
                Wish.Click.SILENT,
                wish.callsGo(),
                Optional.empty());
    }

    @Override
    public KeyHelp keys() {
        return KeyHelp.LESSON;
    }

    @Override
    public String obey(Ask ask) throws Refused {
        if (ask instanceof Ask.ToPass wanted) {
            boolean isThere = lesson.skip(wanted.passes());
            return isThere ? "That pass." : "This pass again.";
        }
        if (ask instanceof Ask.AtTempo wanted) {
            double ofFull = wanted.tempo().beatsPerMinute() / full.beatsPerMinute();
            return told(lesson.againAt(ofFull), "This pass cannot be at that tempo.");
        }
        return ask instanceof Order order ? obey(order) : ""; // sections are those of a practice
    }

    private String obey(Order order) throws Refused {
        switch (order) {
            case PAUSE_OR_GO_ON -> pauseOrGoOn();
            case NEXT_SECTION -> {
                return lesson.skip(1) ? "The next pass." : "This is the last pass.";
            }
            case PREVIOUS_SECTION -> {
                return lesson.skip(-1) ? "The pass before." : "This is the first pass; it begins again.";
            }
            case SECTION_AGAIN, ALL_CALLS_BACK -> {
                lesson.again();
                return "This pass again.";
            }
            case SLOWER -> {
                return again(-1, "This pass cannot be slower.");
            }
            case FASTER -> {
                return again(1, "This pass cannot be faster.");
            }
            case SOONER -> {
                return delays.sooner(1);
            }
            case LATER -> {
                return delays.sooner(-1);
            }
            default -> {
                return ""; // keys of a practice, and those for whoever shows and ends
            }
        }
        return "";
    }

    private String again(int steps, String cannot) throws Refused {
        return told(lesson.again(steps), cannot);
    }

    private String told(Optional<Pace> paceNow, String cannot) {
        return paceNow.map(pace -> "Again at " + told(pace) + ", and so are later passes that were as fast.")
                .orElse(cannot);
    }

    private void pauseOrGoOn() {
        if (lesson.isPaused()) {
            lesson.resume();
        } else {
            lesson.pause();
        }
    }

    @Override
    public Optional<String> news() {
        return Optional.empty();
    }

    @Override
    public Delays delays() {
        return delays.now();
    }
}
