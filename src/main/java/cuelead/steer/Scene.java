package cuelead.steer;

import cuelead.plan.Call;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Heard;
import cuelead.practice.Wish;
import cuelead.sound.Dipping;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What is to be read at a moment of the practice.
 *
 * @param pass        where a lesson is
 * @param keys        the keys that are obeyed
 * @param title       the dance's name
 * @param songSeconds the place in the song, at its own speed
 * @param endSeconds  the song's end, likewise
 * @param place       where in the dance
 * @param now         the call that sounds or waits for its beat; empty when none does
 * @param next        the call after it; empty after the last
 * @param goal        the section whose run-up is heard, after a jump; else empty
 * @param motion      whether it goes on
 * @param state       how it plays, in short parts
 * @param notice      what was just done; may be empty
 */
public record Scene(
        PassLines pass,
        KeyHelp keys,
        String title,
        double songSeconds,
        double endSeconds,
        DancePlace place,
        String now,
        String next,
        String goal,
        PlayState.Motion motion,
        List<String> state,
        String notice) {
    public Scene {
        state = List.copyOf(state);
    }

    public static Scene of(Moment moment, Follower follower) {
        Heard heard = moment.heard();
        double seconds = heard.songSeconds();
        return new Scene(
                moment.pass(),
                moment.keys(),
                heard.timeline().dance().header().title(),
                Math.min(heard.clock().seconds(), heard.clock().endSeconds()),
                heard.clock().endSeconds(),
                place(moment),
                follower.nowAt(seconds).map(Call::words).orElse(""),
                follower.nextAfter(seconds).map(Call::words).orElse(""),
                goal(heard),
                moment.state().motion(),
                state(heard, moment.state()),
                moment.notice());
    }

    /** What comes next of what is bigger than a section; may be empty. */
    public String then() {
        return pass.next().isEmpty() ? place.atWallEnd() : pass.next();
    }

    /** In a lesson the class stands until its piece begins, whatever stands before that in the sheet. */
    private static DancePlace place(Moment moment) {
        Heard heard = moment.heard();
        boolean isLesson = !moment.pass().now().isEmpty();
        return heard.aim()
                .filter(aim -> isLesson && heard.songSeconds() < aim.songSeconds())
                .map(aim -> DancePlace.before(heard.timeline(), aim.at(), heard.songSeconds()))
                .orElseGet(() -> DancePlace.at(heard.timeline(), heard.songSeconds()));
    }

    private static List<String> state(Heard heard, PlayState play) {
        CallSettings settings = play.calls();
        List<String> parts = new ArrayList<>();
        parts.add(
                switch (play.motion()) {
                    case PLAYING -> isOver(heard) ? "Over" : "Playing";
                    case PAUSED -> "PAUSED";
                    case NO_MUSIC -> "CALLS ONLY";
                    case NO_CALLS -> "MUSIC ONLY";
                    case NO_DEVICE -> "NO SOUND DEVICE";
                });
        if (play.repeating() == Heard.Repeating.A_SECTION) {
            parts.add("repeating" + repeated(heard));
        }
        play.pace().flatMap(SongPace::told).ifPresent(parts::add);
        parts.add("lead " + Told.decimal(settings.lead().toDecimal()));
        parts.add("calls: " + calls(heard, settings) + where(play.callsGo()));
        parts.add("dip " + Told.decimal(play.dip().db()) + " dB" + (isOfBand(play.dip()) ? " of 1-4 kHz" : ""));
        if (play.voiceDb() != 0) {
            parts.add(String.format(Locale.ROOT, "voice %+.0f dB", play.voiceDb()));
        }
        if (play.click() == Wish.Click.EVERY_BEAT) {
            parts.add("click");
        }
        return parts;
    }

    /** A song may sound on for some seconds behind its last beat. */
    private static boolean isOver(Heard heard) {
        return heard.songSeconds() >= heard.timeline().endSeconds();
    }

    /** The section's name as soon as it is heard again. */
    private static String repeated(Heard heard) {
        return heard.repeating() == Heard.Repeating.A_SECTION
                ? heard.aim().map(aim -> " " + aim.section().name()).orElse("")
                : "";
    }

    private static boolean isOfBand(Dipping dip) {
        return dip.db() > 0 && dip.range() == Dipping.Range.SPEECH_BAND;
    }

    private static String where(CallsGo callsGo) {
        return switch (callsGo) {
            case WITH_THE_MUSIC -> "";
            case LEFT -> ", left";
            case RIGHT -> ", right";
            case APART -> ", in your ear";
        };
    }

    private static String goal(Heard heard) {
        return heard.repeating() == Heard.Repeating.A_SECTION
                ? ""
                : heard.aim()
                        .map(aim ->
                                aim.section().name() + " of wall " + aim.run().wall())
                        .orElse("");
    }

    /** With a fade what this wall has of it. */
    private static String calls(Heard heard, CallSettings settings) {
        int wall = heard.timeline()
                .at(heard.songSeconds())
                .map(count -> count.run().wall())
                .orElse(1);
        return settings.levelOf(wall).word()
                + (settings.fading() == CallSettings.Fading.WALL_BY_WALL ? ", fading" : "");
    }
}
