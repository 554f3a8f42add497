package cuelead.cli;

import cuelead.practice.Delays;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.steer.DeviceChoice;
import cuelead.steer.LivePlay;
import cuelead.steer.SpeakerOpening;
import cuelead.steer.SpeakerPair;

/** Opens keys and speakers while a practice is made ready, plays what is made of it, and closes all again. */
record LiveStart(Surroundings surroundings, Wish wish, SoundOptions sound) {
    private static final String WITHOUT_DEVICE =
            " Or write a file instead: -o FILE with cuelead render or cuelead walkthrough.";

    /** Makes of a practice what is to be played. */
    interface Content {
        Playing of(Practice practice) throws Refused;
    }

    /** Plays it to its end. */
    interface Playing {
        void on(LivePlay play) throws Refused, InterruptedException;
    }

    void play(Content content) throws Refused, InterruptedException {
        Delays delays = sound.delays();
        DeviceChoice choice = sound.choose(surroundings.devices());
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (OpenedKeys opened = OpenedKeys.of(surroundings);
                SpeakerOpening opening = SpeakerOpening.begin(surroundings.devices(), choice, wish.rate());
                Practice practice = start.prepareToPlay()) {
            Playing playing = content.of(practice);
            SpeakerPair speakers = speakers(opening, choice, practice);
            Caution.OF_A_CLASS.forEach(surroundings.err()::println);
            playing.on(new LivePlay(practice, speakers, wish, delays, new TerminalStage(surroundings, opened.keys())));
            start.tellProblems(practice);
            start.remindOfErrors(practice);
        }
    }

    private static SpeakerPair speakers(SpeakerOpening opening, DeviceChoice choice, Practice practice) throws Refused {
        try {
            return opening.at(practice.rate());
        } catch (Refused none) {
            // where one was named, there are others
            throw choice.equals(DeviceChoice.USUAL) ? new Refused(none.getMessage() + WITHOUT_DEVICE, none) : none;
        }
    }
}
