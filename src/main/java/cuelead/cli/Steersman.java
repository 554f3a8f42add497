package cuelead.cli;

import cuelead.dance.Counts;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.Timeline;
import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.practice.LivePractice;
import cuelead.practice.Wish;
import cuelead.time.Beats;
import java.util.List;
import java.util.function.UnaryOperator;

/** Gives a user's orders to the practice that plays, and says what was done. Used on one thread. */
final class Steersman {
    private static final Beats LEAST_LEAD = Beats.HALF;
    private static final Beats MOST_LEAD = Beats.of(16);
    private static final double DIP_STEP_DB = 2;
    private static final double MOST_DIP_DB = 24;
    private static final double VOICE_STEP_DB = 1;
    private static final double MOST_VOICE_DB = 6;
    private static final double EAR_STEP_SECONDS = 0.005;
    private static final double DISPLAY_STEP_SECONDS = 0.010;

    private final LivePractice practice;
    private boolean repeats;
    private double dipDb;
    private double otherDipDb;
    private CallsGo callsGo;
    private double voiceDb;
    private Wish.Click click;
    private CallSettings.Fading fading;

    /** @param wish what the practice was made for */
    Steersman(LivePractice practice, Wish wish) {
        this.practice = practice;
        click = wish.click();
        fading = wish.fading();
        callsGo = wish.callsGo();
        dipDb = callsGo.usualDipDb();
        otherDipDb = dipDb == 0 ? CallsGo.WITH_THE_MUSIC.usualDipDb() : 0;
    }

    PlayState state() {
        PlayState.Motion motion = practice.isPaused() ? PlayState.Motion.PAUSED : PlayState.Motion.PLAYING;
        return new PlayState(motion, dipDb, voiceDb, click, callsGo);
    }

    /** Obeys; gives what was done in a few words, empty where it shows by itself. */
    String obey(Order order) {
        return switch (order) {
            case PAUSE_OR_GO_ON -> pauseOrGoOn();
            case NEXT_SECTION -> jump("Next section.", () -> practice.jumpSections(1));
            case PREVIOUS_SECTION -> jump("The section before.", () -> practice.jumpSections(-1));
            case SECTION_AGAIN -> jump("This section again.", () -> practice.jumpSections(0));
            case NEXT_WALL -> jump("Next wall.", () -> practice.jumpWalls(1));
            case PREVIOUS_WALL -> jump("The wall before.", () -> practice.jumpWalls(-1));
            case FROM_THE_TOP -> jump("From the top.", practice::fromTheTop);
            case REPEAT_SECTION -> repeatOrGoOn();
            case SHORTER_LEAD -> lead(Beats.ZERO.minus(Beats.HALF));
            case LONGER_LEAD -> lead(Beats.HALF);
            case FEWER_CALLS -> level(1);
            case MORE_CALLS -> level(-1);
            case ALL_CALLS_BACK -> allCallsBack();
            case FADE -> fade();
            case CLICK -> click();
            case LESS_DIP -> dip(-DIP_STEP_DB);
            case MORE_DIP -> dip(DIP_STEP_DB);
            case SOFTER_VOICE -> voice(-VOICE_STEP_DB);
            case LOUDER_VOICE -> voice(VOICE_STEP_DB);
            case COUNT_ONE_IS_NOW -> jump("Count 1 is now.", practice::countOneIsNow);
            case BEAT_EARLIER -> move("The dance is a beat earlier.", Beats.ZERO.minus(Beats.ONE));
            case BEAT_LATER -> move("The dance is a beat later.", Beats.ONE);
            case EIGHT_EARLIER -> move("The dance is " + section() + " earlier.", eight(-1));
            case EIGHT_LATER -> move("The dance is " + section() + " later.", eight(1));
            case WALL_EARLIER -> jump("The dance is a wall earlier.", () -> practice.moveDanceByWall(-1));
            case WALL_LATER -> jump("The dance is a wall later.", () -> practice.moveDanceByWall(1));
            case OTHER_SIDE -> otherSide();
            case SOONER -> delay(1);
            case LATER -> delay(-1);
            case HELP, QUIT -> ""; // for whoever shows and ends
        };
    }

    private static String done(String what, Runnable action) {
        action.run();
        return what;
    }

    /** Any jump leaves what is repeated. */
    private String jump(String what, Runnable action) {
        repeats = false;
        return done(what, action);
    }

    private String move(String what, Beats later) {
        return jump(what, () -> practice.moveDance(later));
    }

    private Beats eight(int sections) {
        Timeline timeline = practice.heard().timeline();
        return timeline.beatsOf(Counts.of(timeline.dance().header().metre().countsInSection()))
                .times(sections);
    }

    private String section() {
        int counts = practice.heard().timeline().dance().header().metre().countsInSection();
        return counts == 8 ? "an eight" : counts + " counts";
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
            return jump("On after this section.", practice::leaveLoop);
        }
        repeats = true;
        return done("This section is repeated.", practice::loopSection);
    }

    private String lead(Beats longer) {
        change(now -> {
            Beats lead = between(LEAST_LEAD, now.lead().plus(longer), MOST_LEAD);
            CallSettings usual = CallSettings.withLead(lead);
            return new CallSettings(lead, usual.sectionLead(), now.level(), now.fading());
        });
        return longer.ticks() > 0 ? "Calls come half a beat earlier." : "Calls come half a beat later.";
    }

    private static Beats between(Beats least, Beats value, Beats most) {
        Beats atLeast = value.compareTo(least) < 0 ? least : value;
        return atLeast.compareTo(most) > 0 ? most : atLeast;
    }

    private String level(int fewer) {
        List<CallLevel> levels = List.of(CallLevel.values());
        change(now -> {
            int index = Math.max(0, Math.min(levels.size() - 1, levels.indexOf(now.level()) + fewer));
            return new CallSettings(now.lead(), now.sectionLead(), levels.get(index), now.fading());
        });
        return fewer > 0 ? "Fewer calls." : "More calls.";
    }

    private String fade() {
        boolean isSteady = fading == CallSettings.Fading.STEADY;
        fading = isSteady ? CallSettings.Fading.WALL_BY_WALL : CallSettings.Fading.STEADY;
        CallSettings.Fading wanted = fading;
        change(now -> new CallSettings(now.lead(), now.sectionLead(), now.level(), wanted));
        return isSteady ? "Calls grow fewer from wall to wall." : "Calls do not fade any more.";
    }

    private String allCallsBack() {
        fading = CallSettings.Fading.STEADY;
        practice.allCallsBack();
        return "All calls are back.";
    }

    private void change(UnaryOperator<CallSettings> change) {
        practice.calls(change);
    }

    private String click() {
        click = click == Wish.Click.SILENT ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT;
        practice.click(click);
        return click == Wish.Click.SILENT ? "Click off." : "Click on.";
    }

    private String dip(double moreDb) {
        dipDb = Math.max(0, Math.min(MOST_DIP_DB, dipDb + moreDb));
        double wanted = dipDb;
        practice.levels(now -> now.withDip(wanted));
        return "The music goes down by " + Told.decimal(dipDb) + " dB under the calls.";
    }

    private String otherSide() {
        return switch (callsGo) {
            case WITH_THE_MUSIC -> calls(CallsGo.LEFT, "Calls on the left, music on the right.");
            case LEFT -> calls(CallsGo.RIGHT, "Calls on the right, music on the left.");
            case RIGHT -> calls(CallsGo.WITH_THE_MUSIC, "Calls and music on both sides.");
            case APART -> "The calls have a device of their own.";
        };
    }

    private String calls(CallsGo next, String what) {
        if (next.usualDipDb() != callsGo.usualDipDb()) {
            double before = dipDb;
            dipDb = otherDipDb;
            otherDipDb = before;
        }
        callsGo = next;
        double wanted = dipDb;
        return done(what, () -> practice.levels(now -> next.on(now, wanted)));
    }

    /** Calls in the ear that shall sound sooner are on a device that is later. */
    private String delay(int sooner) {
        Delays now = practice.delays();
        Delays other = callsGo == CallsGo.APART
                ? now.withCallsLaterBy(sooner * EAR_STEP_SECONDS)
                : now.withMusicLaterBy(-sooner * DISPLAY_STEP_SECONDS);
        practice.delays(other);
        String what = callsGo == CallsGo.APART ? "The calls in your ear come " : "The display comes ";
        return what + (sooner > 0 ? "sooner" : "later") + ": " + SoundOptions.asking(callsGo, other) + ".";
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
