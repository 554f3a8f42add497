package cuelead.window.floor;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.steer.DeviceChoice;
import cuelead.steer.KeyHelp;
import cuelead.steer.LivePlay;
import cuelead.steer.Order;
import cuelead.steer.SoundDevices;
import cuelead.steer.SpeakerOpening;
import cuelead.steer.Stage;
import cuelead.steer.View;
import java.util.List;
import java.util.Optional;

/** Makes practices ready and plays them, one at a time, each on a thread of its own; no call waits for it. */
final class Player {
    private final Places places;
    private final SoundDevices devices;
    private final Follower follower;
    private volatile Optional<Playing> now = Optional.empty();
    /** As they were last found by trying. */
    private volatile Delays delays = Delays.NONE;

    /** Is told how a practice goes. Called on threads of the player. */
    interface Follower {
        /** How far a longer piece of work has come, 0 to 1. */
        void at(String work, double done);

        /** It is heard from now on; what is doubtful about it. */
        void begun(List<Problem> problems);

        void shown(FloorScene scene);

        void told(String sentence);

        /** It is over: why it could not be played, if it could not. */
        void over(Optional<String> refusal);
    }

    Player(Places places, SoundDevices devices, Follower follower) {
        this.places = places;
        this.devices = devices;
        this.follower = follower;
    }

    /** Plays what is wished, in place of what plays. */
    void play(Wish wish, DeviceChoice speakers) {
        stop();
        Playing next = new Playing(wish, speakers);
        now = Optional.of(next);
        Thread thread = new Thread(next::run, "cuelead-practice");
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks for something of what plays; nothing happens where nothing does. */
    void ask(Order order) {
        now.ifPresent(playing -> playing.floor.ask(order));
    }

    void stop() {
        ask(Order.QUIT);
        now = Optional.empty();
    }

    /** One practice, from its wish to its end. */
    private final class Playing implements Stage {
        private final Wish wish;
        private final DeviceChoice speakers;
        private final FloorFollower floor = new FloorFollower(this::show);

        Playing(Wish wish, DeviceChoice speakers) {
            this.wish = wish;
            this.speakers = speakers;
        }

        private boolean isNow() {
            return now.filter(this::equals).isPresent();
        }

        private void show(FloorScene scene) {
            if (isNow()) {
                follower.shown(scene);
            }
        }

        void run() {
            Optional<String> refusal = Optional.empty();
            try {
                play();
            } catch (Refused refused) {
                refusal = Optional.of(refused.getMessage());
            } catch (InterruptedException brokenOff) {
                Thread.currentThread().interrupt();
            } catch (OutOfMemoryError none) {
                refusal = Optional.of("There is not enough memory for this song; close other programs and try again.");
            } catch (RuntimeException | Error mistake) {
                refusal = Optional.of("Cuelead made a mistake of its own (" + mistake + ").");
                throw mistake;
            } finally {
                if (isNow()) {
                    now = Optional.empty();
                    follower.over(refusal);
                }
            }
        }

        private void play() throws Refused, InterruptedException {
            try (SpeakerOpening opening = SpeakerOpening.begin(devices, speakers, wish.rate());
                    Practice practice = Practice.prepareToPlay(wish, places, follower::at)) {
                LivePlay live = new LivePlay(practice, opening.at(practice.rate()), wish, delays, this);
                if (isNow()) {
                    follower.begun(practice.problems());
                    live.practise();
                }
            }
        }

        @Override
        public View view(double fromSeconds, KeyHelp keys) {
            return floor;
        }

        @Override
        public void tell(String sentence) {
            follower.told(sentence);
        }

        @Override
        public void tellDelays(CallsGo callsGo, Delays found) {
            delays = found;
        }
    }
}
