package cuelead.steer;

import cuelead.practice.Heard;
import cuelead.practice.SpokenCall;
import java.util.List;

/** Makes the scenes of one practice. Used on one thread. */
public final class SceneMaker {
    private int version = -1;
    private Follower follower = new Follower(List.of());

    public Scene scene(Moment moment) {
        Heard heard = moment.heard();
        if (heard.version() != version) {
            version = heard.version();
            follower = new Follower(heard.calls().stream().map(SpokenCall::call).toList());
        }
        return Scene.of(moment, follower);
    }
}
