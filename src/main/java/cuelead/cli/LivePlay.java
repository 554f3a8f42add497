package cuelead.cli;

import cuelead.plan.Call;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import cuelead.report.Refused;
import cuelead.sound.Speakers;

/**
 * Plays a practice to its end while the terminal follows what is heard: one line drawn again and again on a terminal,
 * else a line a call. Used once, on one thread.
 */
final class LivePlay {
    private static final long POLL_MILLIS = 40;
    /** The song loads many times faster than it plays: this much is enough to begin with. */
    private static final double LOADED_FIRST_SECONDS = 3;

    private final Surroundings surroundings;
    private final Practice practice;
    private final Speakers speakers;
    private final Follower follower;
    private final Screen screen;
    private double followedSeconds;
    private boolean isPaused;
    private boolean isDeviceLost;
    private boolean isQuit;

    LivePlay(Surroundings surroundings, Practice practice, Speakers speakers) {
        this.surroundings = surroundings;
        this.practice = practice;
        this.speakers = speakers;
        follower = new Follower(
                practice.timeline(),
                practice.spokenCalls().stream().map(SpokenCall::call).toList());
        screen = new Screen(surroundings.out());
        followedSeconds = practice.rate().secondsAt(practice.fromFrame());
    }

    void run() throws InterruptedException, Refused {
        long loadedFirst = practice.fromFrame() + practice.rate().frameAt(LOADED_FIRST_SECONDS);
        practice.await(Math.min(practice.toFrame(), loadedFirst));
        speakers.play(practice.mix(), practice.fromFrame());
        Thread clearAtExit = new Thread(screen::clear, "cuelead-clear-line");
        Runtime.getRuntime().addShutdownHook(clearAtExit);
        try (Keys keys = Keys.of(surroundings)) {
            keys.usage().ifPresent(surroundings.err()::println);
            while (!speakers.awaitEnd(POLL_MILLIS)) {
                obey(keys);
                watchDevice();
                followTo(practice.rate().secondsAt(speakers.heardFrame()));
            }
        } finally {
            screen.clear();
            forget(clearAtExit);
        }
        if (!isQuit) {
            tellCallsTo(practice.rate().secondsAt(practice.toFrame()));
        }
        tellDropOuts();
    }

    private static void forget(Thread clearAtExit) {
        try {
            Runtime.getRuntime().removeShutdownHook(clearAtExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }

    private void obey(Keys keys) {
        keys.poll().ifPresent(key -> {
            switch (key) {
                case QUIT -> {
                    isQuit = true;
                    speakers.stop();
                }
                case PAUSE_OR_GO_ON -> pauseOrGoOn();
            }
        });
    }

    private void pauseOrGoOn() {
        isPaused = !isPaused;
        if (isPaused) {
            speakers.pause();
        } else {
            speakers.resume();
        }
    }

    private void watchDevice() {
        boolean isLost = speakers.isDeviceLost();
        if (isLost && !isDeviceLost) {
            screen.clear();
            surroundings.err().println("The sound device is gone; the practice goes on when one is connected.");
        }
        isDeviceLost = isLost;
    }

    private void followTo(double songSeconds) {
        if (surroundings.terminal().output() == Terminal.End.TERMINAL) {
            screen.show(isPaused ? "Paused. p: go on   q: quit" : follower.lineAt(songSeconds));
        } else {
            tellCallsTo(songSeconds);
        }
    }

    private void tellCallsTo(double songSeconds) {
        if (surroundings.terminal().output() == Terminal.End.TERMINAL || songSeconds <= followedSeconds) {
            return;
        }
        for (Call call : follower.startingIn(followedSeconds, songSeconds)) {
            surroundings.out().println(CallLine.of(call));
        }
        followedSeconds = songSeconds;
    }

    private void tellDropOuts() {
        int dropOuts = speakers.dropOuts();
        if (dropOuts > 0) {
            surroundings
                    .err()
                    .println("The sound broke off " + Told.number(dropOuts, "time")
                            + " because this computer was too busy; close other programs.");
        }
    }
}
