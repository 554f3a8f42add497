package cuelead.cli;

import cuelead.plan.Call;
import cuelead.practice.Heard;
import cuelead.practice.SpokenCall;
import cuelead.steer.Follower;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.View;
import java.util.List;
import java.util.Optional;

/** A line a call, as it is heard: for files, pipes and whatever is no terminal. */
final class CallLines implements View {
    /** What is heard is looked at some times a second: no call of a new version is older. */
    private static final double LOOK_SECONDS = 0.5;

    private final Surroundings surroundings;
    private int version = 1;
    private Follower follower = new Follower(List.of());
    private String pass = "";
    private double toldToSeconds;

    /** @param fromSeconds where in the song what plays begins */
    CallLines(Surroundings surroundings, double fromSeconds) {
        this.surroundings = surroundings;
        toldToSeconds = fromSeconds;
    }

    @Override
    public void follow(Moment moment) {
        Heard heard = moment.heard();
        double songSeconds = heard.songSeconds();
        if (!moment.pass().now().equals(pass)) {
            pass = moment.pass().now();
            surroundings.out().println(pass + ", " + moment.pass().left());
        }
        if (heard.version() != version) {
            version = heard.version();
            toldToSeconds = songSeconds - LOOK_SECONDS;
        }
        if (songSeconds > toldToSeconds) {
            follower = new Follower(heard.calls().stream().map(SpokenCall::call).toList());
            List<Call> begun = follower.startingIn(toldToSeconds, songSeconds);
            begun.forEach(call -> surroundings.out().println(CallLine.of(call)));
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
