package cuelead.cli;

import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import java.util.Optional;

/** A line a call, as it is heard: for files, pipes and whatever is no terminal. */
final class CallLines implements View {
    private final Surroundings surroundings;
    private final Follower follower;
    private double toldToSeconds;

    CallLines(Surroundings surroundings, Practice practice) {
        this.surroundings = surroundings;
        // nothing steers it, so these are the calls until the end
        follower = new Follower(
                practice.spokenCalls().stream().map(SpokenCall::call).toList());
        toldToSeconds = practice.rate().secondsAt(practice.fromFrame());
    }

    @Override
    public void follow(Moment moment) {
        double songSeconds = moment.heard().songSeconds();
        if (songSeconds > toldToSeconds) {
            follower.startingIn(toldToSeconds, songSeconds)
                    .forEach(call -> surroundings.out().println(CallLine.of(call)));
            toldToSeconds = songSeconds;
        }
    }

    @Override
    public void tell(String sentence) {
        surroundings.err().println(sentence);
    }

    @Override
    public Optional<Order> order() {
        return Optional.empty();
    }

    @Override
    public void close() {}
}
