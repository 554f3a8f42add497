package cuelead.steer;

import cuelead.practice.Delays;
import cuelead.practice.LivePractice;
import cuelead.practice.LiveWalkthrough;
import cuelead.practice.Practice;
import cuelead.practice.Walkthrough;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.TimeUnit;

/** Plays a practice or a lesson to its end, steered by keys, while the terminal follows what is heard. Used once, on one thread. */
public final class LivePlay {
    private static final long POLL_MILLIS = 16;
    /** The view is drawn at every third look: about twenty times a second. */
    private static final int LOOKS_A_DRAWING = 3;
    /** The song loads many times faster than it plays: this much is enough to begin with. */
    private static final double LOADED_FIRST_SECONDS = 3;

    private static final String RISES = "The music comes in softly.";
    private static final String ONE_MOMENT = "One moment: the song is still being read.";

    private static final long NOTICE_NANOS = TimeUnit.SECONDS.toNanos(3);

    private final Practice practice;
    private final SpeakerPair speakers;
    private final Wish wish;
    private final Delays delays;
    private final Stage stage;
    private boolean isWhollyLoaded;
    private final LostDevices lost;
    /** Orders that came before the whole song was there, the oldest first. */
    private final Queue<Ask> early = new ArrayDeque<>();

    private boolean isQuit;
    private String notice = "";
    private long noticeNanos;

    /**
     * Of a practice that is ready.
     *
     * @param wish   what it was made for
     * @param delays how much later than the computer knows things are heard
     * @param stage  where it is shown
     */
    public LivePlay(Practice practice, SpeakerPair speakers, Wish wish, Delays delays, Stage stage) {
        this.practice = practice;
        this.speakers = speakers;
        this.wish = wish;
        this.delays = delays;
        this.stage = stage;
        lost = new LostDevices(speakers);
    }

    /** A practice of a dance to its end. */
    public void practise() throws InterruptedException, Refused {
        long loadedFirst = practice.fromFrame() + practice.rate().frameAt(LOADED_FIRST_SECONDS);
        practice.awaitPlayable(Math.min(practice.toFrame(), loadedFirst));
        double fromSeconds = practice.rate().secondsAt(practice.fromFrame());
        LivePractice live = practice.live(speakers.main(), speakers.ear(), delays);
        if (practice.song().isPresent()) {
            notice(RISES);
        }
        play(new Steersman(live, wish), fromSeconds);
    }

    /** A lesson to its end. */
    public void teach(Walkthrough walkthrough) throws InterruptedException, Refused {
        awaitWholeSong();
        LiveWalkthrough live = walkthrough.live(speakers.main(), speakers.ear(), delays);
        play(new LessonSteersman(live, practice.dance(), walkthrough.full(), wish), Double.NEGATIVE_INFINITY);
    }

    private void play(Steered live, double fromSeconds) throws InterruptedException, Refused {
        try (View view = stage.view(fromSeconds, live.keys())) {
            for (int look = 0; !isQuit && !live.hasEnded(); look++) {
                view.awaitOrder(speakers.main(), POLL_MILLIS);
                boolean isObeyed = obey(view, live);
                live.tick();
                live.news().ifPresent(this::notice);
                for (String news : lost.news()) {
                    view.tell(news);
                    notice(news);
                }
                if (isObeyed || view.isDrawnAtEveryLook() || look % LOOKS_A_DRAWING == 0) {
                    view.follow(moment(live));
                    live.getReady();
                }
            }
            if (!isQuit) {
                view.follow(new Moment(live.pass(), live.keys(), live.heard(), live.state(), ""));
            }
            speakers.stop();
        }
        tellDelays(live);
        lost.account().forEach(stage::tell);
        DropOuts.told(speakers.dropOuts()).ifPresent(stage::tell);
    }

    private boolean obey(View view, Steered live) throws InterruptedException, Refused {
        boolean isObeyed = false;
        for (Optional<? extends Ask> order = view.order(); order.isPresent(); order = view.order()) {
            isObeyed = true;
            if (order.get() == Order.QUIT) {
                isQuit = true;
                return true;
            }
            early.add(order.get());
            notice(ONE_MOMENT);
        }
        while (!early.isEmpty() && isWholeSongHere()) {
            isObeyed = true;
            notice(live.obey(early.remove()));
        }
        return isObeyed;
    }

    /** While the song loads, playing, the display and the voice go on. */
    private boolean isWholeSongHere() throws InterruptedException, Refused {
        if (!isWhollyLoaded && !practice.isSongLoaded()) {
            return false;
        }
        awaitWholeSong();
        return true;
    }

    private void notice(String what) {
        notice = what;
        noticeNanos = System.nanoTime();
    }

    /** A jump may lead to any place of the song. */
    private void awaitWholeSong() throws InterruptedException, Refused {
        if (!isWhollyLoaded) {
            practice.awaitPlayable(practice.toFrame());
            isWhollyLoaded = true;
        }
    }

    private Moment moment(Steered live) throws Refused {
        boolean isNew = System.nanoTime() - noticeNanos < NOTICE_NANOS;
        PlayState state = live.state();
        return new Moment(
                live.pass(),
                live.keys(),
                live.heard(),
                state.with(lost.motion(state.motion())),
                isNew ? notice : lost.missing());
    }

    /** What was found by trying is worth writing down. */
    private void tellDelays(Steered live) {
        if (!live.delays().equals(delays)) {
            stage.tellDelays(wish.callsGo(), live.delays());
        }
    }
}
