package cuelead.window.song;

import cuelead.practice.Progress;
import cuelead.practice.Wish;
import cuelead.time.BeatGrid;
import cuelead.window.frame.Choices;
import cuelead.window.frame.Course;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import java.nio.file.Path;
import java.util.Optional;

/** What is heard of a song on its page. Used on the thread of events. */
final class SongSound {
    private final Host host;
    private final Page page;
    private final SongPlay play;

    SongSound(Host host, Page page, SongPlay.Follower follower) {
        this.host = host;
        this.page = page;
        play = new SongPlay(follower);
    }

    SongPlay play() {
        return play;
    }

    /**
     * Plays from a place on, in place of what plays.
     *
     * @param clicked the beats that are clicked; empty = none
     * @param calls   the sheet whose calls are heard; empty = none
     */
    void from(double songSeconds, Path song, Optional<BeatGrid> clicked, Optional<Path> calls) {
        host.hushOthers(page);
        Choices choices = host.inHand().choices();
        SongPlay.Begins begins = calls.isPresent()
                ? speakers -> CalledSounding.begin(
                        wish(calls.get(), song, songSeconds, clicked, choices),
                        host.means().places(),
                        speakers,
                        Progress.UNTOLD)
                : speakers -> ClickedSounding.begin(song, speakers, songSeconds, clicked);
        play.play(
                begins,
                rate -> choices.devices(host.means().devices())
                        .open(host.means().devices(), rate));
    }

    private static Wish wish(Path sheet, Path song, double songSeconds, Optional<BeatGrid> clicked, Choices choices) {
        Wish.Click click = clicked.isPresent() ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT;
        return choices.atOwnSpeed()
                .wish(sheet, Optional.of(song), Course.TO_THE_SONG)
                .from(songSeconds, click);
    }
}
