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
            SpeakerPair speakers = opening.at(practice.rate());
            Caution.OF_A_CLASS.forEach(surroundings.err()::println);
            playing.on(new LivePlay(practice, speakers, wish, delays, new TerminalStage(surroundings, opened.keys())));
            start.tellProblems(practice);
            start.remindOfErrors(practice);
        }
    }
}
