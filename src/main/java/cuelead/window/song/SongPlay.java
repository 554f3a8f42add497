package cuelead.window.song;

import cuelead.report.Refused;
import cuelead.steer.LostDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.BeatGrid;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;

/** Plays a song, each time on a thread of its own; no call waits for it. */
final class SongPlay {
    private static final long POLL_MILLIS = 10;
    private static final int LOOKS_A_TELLING = 2;
    private static final double NANOS = 1e9;
    /** A place that was seen longer ago is not reckoned on: the thread may be held up. */
    private static final double LONGEST_SECONDS = 0.1;

    private final Follower follower;
    private volatile Optional<Playing> now = Optional.empty();

    /** Is told how it goes. Called on threads of the player. */
    interface Follower {
        /** What is heard, some times a second. */
        void heard(double songSeconds, boolean isPaused);

        void told(String sentence);

        /** Nothing is heard any more: why it could not be played, if it could not. */
        void over(Optional<String> refusal);
    }

    /** Makes the sound. On the thread of the player. */
    @FunctionalInterface
    interface Begins {
        Sounding begin(OpensSpeakers speakers) throws Refused, InterruptedException;
    }

    SongPlay(Follower follower) {
        this.follower = follower;
    }

    /** Plays in place of what plays. */
    void play(Begins begins, OpensSpeakers speakers) {
        stop();
        Playing next = new Playing(begins, speakers);
        now = Optional.of(next);
        Thread thread = new Thread(next::run, "cuelead-song");
        thread.setDaemon(true);
        thread.start();
    }

    boolean isPlaying() {
        return now.isPresent();
    }

    boolean isPaused() {
        return now.map(playing -> playing.place.isPaused).orElse(false);
    }

    void pauseOrGoOn() {
        ask(sounding -> {
            if (sounding.isPaused()) {
                sounding.resume();
            } else {
                sounding.pause();
            }
        });
    }

    /** Clicks at these beats are heard from now on, or none. */
    void click(Optional<BeatGrid> beats) {
        ask(sounding -> sounding.click(beats));
    }

    private void ask(Consumer<Sounding> order) {
        now.ifPresent(playing -> playing.orders.add(order));
    }

    /** The place in the song that is heard now; empty before anything is, and when nothing is any more. */
    Optional<Double> heardSeconds() {
        return now.flatMap(Playing::heardSeconds);
    }

    void stop() {
        now.ifPresent(playing -> playing.isStopped = true);
        now = Optional.empty();
    }

    /** What was heard when. */
    private record Place(double songSeconds, long nanos, boolean isPaused) {
        double now() {
            double since = Math.min(LONGEST_SECONDS, (System.nanoTime() - nanos) / NANOS);
            return isPaused ? songSeconds : songSeconds + since;
        }
    }

    /** One time that a song is played. */
    private final class Playing {
        private final Begins begins;
        private final OpensSpeakers opening;
        private final Queue<Consumer<Sounding>> orders = new ConcurrentLinkedQueue<>();
        private volatile Place place = new Place(Double.NaN, 0, false);
        private volatile boolean isStopped;
        private Optional<LostDevices> lost = Optional.empty();

        Playing(Begins begins, OpensSpeakers opening) {
            this.begins = begins;
            this.opening = opening;
        }

        Optional<Double> heardSeconds() {
            Place seen = place;
            return Double.isNaN(seen.songSeconds) ? Optional.empty() : Optional.of(seen.now());
        }

        void run() {
            Optional<String> refusal = Optional.empty();
            try (Sounding sounding = begins.begin(rate -> {
                SpeakerPair speakers = opening.open(rate);
                lost = Optional.of(new LostDevices(speakers));
                return speakers;
            })) {
                play(sounding);
            } catch (Refused refused) {
                refusal = Optional.of(refused.getMessage());
            } catch (InterruptedException brokenOff) {
                Thread.currentThread().interrupt();
            } catch (OutOfMemoryError none) {
                refusal = Optional.of("There is not enough memory for this song; close other programs and try again.");
            } finally {
                if (now.filter(this::equals).isPresent()) {
                    now = Optional.empty();
                    follower.over(refusal);
                }
            }
        }

        private void play(Sounding sounding) throws Refused, InterruptedException {
            for (int look = 0; !isStopped && !sounding.hasEnded(); look++) {
                for (Consumer<Sounding> order = orders.poll(); order != null; order = orders.poll()) {
                    order.accept(sounding);
                }
                sounding.tick();
                place = new Place(sounding.heardSeconds(), System.nanoTime(), sounding.isPaused());
                if (!isStopped && look % LOOKS_A_TELLING == 0) {
                    follower.heard(place.songSeconds, place.isPaused);
                    lost.ifPresent(devices -> devices.news().forEach(follower::told));
                }
                Thread.sleep(POLL_MILLIS);
            }
        }
    }
}
