package cuelead.steer;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.practice.Heard;
import cuelead.practice.Jump;
import cuelead.practice.LivePractice;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.sound.Dipping;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Gives a user's orders to the practice that plays, and says what was done. Used on one thread. */
public final class Steersman implements Steered {
    private static final double DIP_STEP_DB = 2;
    public static final double MOST_DIP_DB = 24;
    private static final double VOICE_STEP_DB = 1;
    private static final double MOST_VOICE_DB = 6;

    private final LivePractice practice;
    private final CallChoices calls;
    private final Realigning realigning;
    private final DelaySteps delays;
    private Optional<String> late = Optional.empty();
    private boolean repeats;
    private Dipping dip;
    private Dipping otherDip;
    private CallsGo callsGo;
    private double voiceDb;
    private SongPace pace;
    private Wish.Click click;

    /** @param wish what the practice was made for */
    Steersman(LivePractice practice, Wish wish) {
        this.practice = practice;
        calls = new CallChoices(practice.calls(), () -> pace.speed().ratio(), wanted -> practice.calls(now -> wanted));
        realigning = new Realigning(practice, () -> repeats = false, words -> late = Optional.of(words));
        delays = new DelaySteps(wish.callsGo(), practice.delays(), practice::delays);
        click = wish.click();
        pace = SongPace.of(practice.speed(), practice.heard().timeline().grid().medianTempo());
        callsGo = wish.callsGo();
        dip = wish.dip().on(callsGo);
        otherDip = dip.by(callsGo.usualDipDb() == 0 ? CallsGo.WITH_THE_MUSIC.usualDipDb() : 0);
    }

    @Override
    public Heard heard() {
        return practice.heard();
    }

    @Override
    public void tick() throws Refused {
        practice.tick();
        practice.check();
    }

    @Override
    public void getReady() {
        practice.getReady();
    }

    @Override
    public boolean hasEnded() {
        return practice.hasEnded();
    }

    @Override
    public Delays delays() {
        return delays.now();
    }

    @Override
    public PassLines pass() {
        return PassLines.NONE;
    }

    @Override
    public KeyHelp keys() {
        return KeyHelp.PRACTICE;
    }

    @Override
    public PlayState state() {
        PlayState.Motion motion = practice.isPaused() ? PlayState.Motion.PAUSED : PlayState.Motion.PLAYING;
        Heard.Repeating repeating = repeats ? Heard.Repeating.A_SECTION : Heard.Repeating.NOTHING;
        return new PlayState(motion, calls.wanted(), repeating, dip, voiceDb, click, callsGo, Optional.of(pace));
    }

    @Override
    public String obey(Ask ask) {
        if (ask instanceof Ask.AtTempo wanted) {
            return speed(pace.at(wanted.tempo()), "It is at that tempo already.");
        }
        if (ask instanceof Ask.ToSection wanted) {
            int sections = wanted.sections();
            return sections > 0
                    ? jump(told -> practice.jumpSections(sections, told), JumpWords::nextSection)
                    : back("From that section.", told -> practice.jumpSections(sections, told));
        }
        return ask instanceof Order order ? obey(order) : ""; // passes are those of a lesson
    }

    private String obey(Order order) {
        return switch (order) {
            case PAUSE_OR_GO_ON -> pauseOrGoOn();
            case NEXT_SECTION -> jump(told -> practice.jumpSections(1, told), JumpWords::nextSection);
            case PREVIOUS_SECTION -> back("The section before.", told -> practice.jumpSections(-1, told));
            case SECTION_AGAIN -> back("This section again.", told -> practice.jumpSections(0, told));
            case NEXT_WALL -> jump(told -> practice.jumpWalls(1, told), JumpWords::nextWall);
            case PREVIOUS_WALL -> back("The wall before.", told -> practice.jumpWalls(-1, told));
            case WALL_AGAIN -> back("This wall again.", told -> practice.jumpWalls(0, told));
            case FROM_THE_TOP -> back("From the top: count 1 after its run-up.", practice::fromTheTop);
            case REPEAT_SECTION -> repeatOrGoOn();
            case SHORTER_LEAD -> calls.shorterLead();
            case LONGER_LEAD -> calls.longerLead();
            case FEWER_CALLS -> calls.fewer();
            case MORE_CALLS -> calls.more();
            case ALL_CALLS_BACK -> calls.allBack();
            case FADE -> calls.fadeOrNot();
            case CLICK -> click();
            case LESS_DIP -> dip(-DIP_STEP_DB);
            case MORE_DIP -> dip(DIP_STEP_DB);
            case SOFTER_VOICE -> voice(-VOICE_STEP_DB);
            case LOUDER_VOICE -> voice(VOICE_STEP_DB);
            case COUNT_ONE_IS_NOW,
                    BEAT_EARLIER,
                    BEAT_LATER,
                    EIGHT_EARLIER,
                    EIGHT_LATER,
                    WALL_EARLIER,
                    WALL_LATER,
                    TAKE_REALIGNMENT_BACK -> told(() -> realigning.obey(order));
            case OTHER_SIDE -> otherSide();
            case SOONER -> delays.sooner(1);
            case LATER -> delays.sooner(-1);
            case HELP, QUIT -> ""; // for whoever shows and ends
            case SLOWER -> speed(pace.slower(), "The song cannot be slower.");
            case FASTER -> speed(pace.faster(), "The song cannot be faster.");
        };
    }

    private static String done(String what, Runnable action) {
        action.run();
        return what;
    }

    @Override
    public Optional<String> news() {
        Optional<String> said = late;
        late = Optional.empty();
        return said;
    }

    /** What an order says, if it is obeyed at once; else that is news later. */
    private String told(Runnable order) {
        late = Optional.empty();
        order.run();
        return news().orElse("");
    }

    private String jump(Consumer<Consumer<Jump>> order, Function<Jump, String> words) {
        return told(() -> order.accept(jump -> {
            if (jump.way() != Jump.Way.NO_FURTHER) {
                repeats = false; // any jump leaves what is repeated
            }
            late = Optional.of(words.apply(jump));
        }));
    }

    private String back(String what, Consumer<Consumer<Jump>> order) {
        return jump(order, jump -> JumpWords.back(jump, what));
    }

    private String pauseOrGoOn() {
        if (practice.isPaused()) {
            practice.resume();
        } else {
            practice.pause();
        }
        return "";
    }

    private String repeatOrGoOn() {
        if (repeats) {
            repeats = false;
            return done("On after this section.", practice::leaveLoop);
        }
        repeats = true;
        return done("This section is repeated.", practice::loopSection);
    }

    private String click() {
        click = click == Wish.Click.SILENT ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT;
        practice.click(click);
        return click == Wish.Click.SILENT ? "Click off." : "Click on.";
    }

    private String dip(double moreDb) {
        Dipping before = dip;
        Dipping wanted = dip.by(Math.max(0, Math.min(MOST_DIP_DB, dip.db() + moreDb)));
        dip = wanted;
        practice.levels(now -> now.with(wanted));
        if (dip.db() == 0) {
            return "The music does not go down under the calls.";
        }
        String what = dip.range() == Dipping.Range.WHOLE ? "The music goes" : "The music's 1 to 4 kHz go";
        return what + " down by " + Told.decimal(dip.db()) + " dB under the calls"
                + (dip.equals(before) ? " already." : ".");
    }

    private String otherSide() {
        return switch (callsGo) {
            case WITH_THE_MUSIC -> callsTo(CallsGo.LEFT, "Calls on the left, music on the right.");
            case LEFT -> callsTo(CallsGo.RIGHT, "Calls on the right, music on the left.");
            case RIGHT -> callsTo(CallsGo.WITH_THE_MUSIC, "Calls and music on both sides.");
            case APART -> "The calls have a device of their own.";
        };
    }

    private String callsTo(CallsGo next, String what) {
        if (next.usualDipDb() != callsGo.usualDipDb()) {
            Dipping before = dip;
            dip = otherDip;
            otherDip = before;
        }
        callsGo = next;
        Dipping wanted = dip;
        return done(what, () -> practice.levels(now -> now.with(wanted).with(next.sides())));
    }

    private String speed(SongPace wanted, String cannot) {
        if (wanted.equals(pace)) {
            return cannot;
        }
        pace = wanted;
        practice.speed(pace.speed());
        return pace.told()
                .map(told -> told.substring(0, 1).toUpperCase(Locale.ROOT) + told.substring(1) + ".")
                .orElse("The song's own speed.");
    }

    private String voice(double louderDb) {
        double before = voiceDb;
        voiceDb = Math.max(-MOST_VOICE_DB, Math.min(MOST_VOICE_DB, voiceDb + louderDb));
        double change = voiceDb - before;
        if (change == 0) {
            return louderDb > 0 ? "The voice cannot be louder." : "The voice cannot be softer.";
        }
        practice.levels(now -> now.voiceLouderBy(change));
        return louderDb > 0 ? "The voice is louder." : "The voice is softer.";
    }
}
