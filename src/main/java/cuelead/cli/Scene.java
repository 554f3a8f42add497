package cuelead.cli;

import cuelead.plan.Call;
import cuelead.plan.CallSettings;
import cuelead.practice.Heard;
import cuelead.practice.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What is to be read at a moment of the practice.
 *
 * @param title       the dance's name
 * @param songSeconds the place in the song
 * @param endSeconds  the song's end
 * @param place       where in the dance
 * @param now         the call that sounds or waits for its beat; empty when none does
 * @param next        the call after it; empty after the last
 * @param state       how it plays, in short
 * @param notice      what was just done; may be empty
 */
record Scene(
        String title,
        double songSeconds,
        double endSeconds,
        DancePlace place,
        String now,
        String next,
        String state,
        String notice) {
    private static final String BETWEEN = "  ";

    static Scene of(Moment moment, Follower follower) {
        Heard heard = moment.heard();
        double seconds = heard.songSeconds();
        return new Scene(
                heard.timeline().dance().header().title(),
                seconds,
                heard.timeline().endSeconds(),
                DancePlace.at(heard.timeline(), seconds),
                follower.nowAt(seconds).map(Call::words).orElse(""),
                follower.nextAfter(seconds).map(Call::words).orElse(""),
                state(heard, moment.state()),
                moment.notice());
    }

    private static String state(Heard heard, PlayState play) {
        CallSettings settings = heard.settings();
        List<String> parts = new ArrayList<>();
        parts.add(play.motion() == PlayState.Motion.PAUSED ? "PAUSED" : "Playing");
        if (heard.repeating() == Heard.Repeating.A_SECTION) {
            parts.add("repeating");
        }
        parts.add("lead " + Told.decimal(settings.lead().toDecimal()));
        parts.add("calls: " + settings.level().word()
                + (settings.fading() == CallSettings.Fading.WALL_BY_WALL ? " fading" : ""));
        parts.add("dip " + Told.decimal(play.dipDb()) + " dB");
        if (play.voiceDb() != 0) {
            parts.add(String.format(Locale.ROOT, "voice %+.0f dB", play.voiceDb()));
        }
        if (play.click() == Wish.Click.EVERY_BEAT) {
            parts.add("click");
        }
        return String.join(BETWEEN, parts);
    }
}
