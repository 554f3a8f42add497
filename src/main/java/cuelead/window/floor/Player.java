package cuelead.window.floor;

import cuelead.lesson.LessonWriter;
import cuelead.lesson.Pass;
import cuelead.lesson.UsualLesson;
import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Walkthrough;
import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.steer.Ask;
import cuelead.steer.DeviceChoice;
import cuelead.steer.KeyHelp;
import cuelead.steer.LivePlay;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.SoundDevices;
import cuelead.steer.SpeakerOpening;
import cuelead.steer.Stage;
import cuelead.steer.View;
import cuelead.time.Tempo;
import cuelead.window.frame.Course;
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

        /**
         * It is heard from now on.
         *
         * @param problems what is doubtful about it
         * @param full     counts a minute at full speed
         * @param passes   those of a lesson, as they are told; empty for a dance
         */
        void begun(List<Problem> problems, Tempo full, List<String> passes);

        void shown(FloorScene scene, Moment moment);

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
    void play(Wish wish, DeviceChoice speakers, Course course) {
        stop();
        Playing next = new Playing(wish, speakers, course);
        now = Optional.of(next);
        Thread thread = new Thread(next::run, "cuelead-practice");
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks for something of what plays; nothing happens where nothing does. */
    void ask(Ask ask) {
        now.ifPresent(playing -> playing.floor.ask(ask));
    }

    boolean isPlaying() {
        return now.isPresent();
    }

    void stop() {
        ask(Order.QUIT);
        now = Optional.empty();
    }

    /** One practice, from its wish to its end. */
    private final class Playing implements Stage {
        private final Wish wish;
        private final DeviceChoice speakers;
        private final Course course;
        private final FloorFollower floor = new FloorFollower(this::show);
        private final HeardOrSilent heard = new HeardOrSilent(devices);

        Playing(Wish wish, DeviceChoice speakers, Course course) {
            this.wish = wish;
            this.speakers = speakers;
            this.course = course;
        }

        private boolean isNow() {
            return now.filter(this::equals).isPresent();
        }

        private void show(FloorScene scene, Moment moment) {
            if (isNow()) {
                follower.shown(scene, moment);
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
            try (SpeakerOpening opening = SpeakerOpening.begin(heard, speakers, wish.rate());
                    Practice practice = Practice.prepareToPlay(wish, places, follower::at)) {
                LivePlay live = new LivePlay(practice, opening.at(practice.rate()), wish, delays, this);
                if (course == Course.WALKTHROUGH) {
                    teach(practice, live);
                } else if (isNow()) {
                    begin(practice, practice.timeline().countTempo(), List.of());
                    live.practise();
                }
            }
        }

        private void teach(Practice practice, LivePlay live) throws Refused, InterruptedException {
            Pass.Over atLast = practice.song().isPresent() ? Pass.Over.MUSIC : Pass.Over.CLICKS;
            Walkthrough lesson = practice.walkthrough(UsualLesson.of(practice.dance(), atLast));
            LessonWriter lines = new LessonWriter(practice.dance());
            List<String> passes =
                    lesson.lesson().passes().stream().map(lines::line).toList();
            if (isNow()) {
                begin(practice, lesson.full(), passes);
                live.teach(lesson);
            }
        }

        private void begin(Practice practice, Tempo full, List<String> passes) {
            follower.begun(practice.problems(), full, passes);
            if (heard.isSilent()) {
                follower.told(HeardOrSilent.NOTHING_HEARD);
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
