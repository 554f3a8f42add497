package cuelead.window.floor;

import cuelead.plan.DancedCount;
import cuelead.plan.Timeline;
import cuelead.practice.Heard;
import cuelead.steer.Moment;
import cuelead.steer.PlayState;
import cuelead.steer.Scene;
import cuelead.steer.SceneMaker;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes of what is heard what stands on the floor view. Used on one thread. */
final class FloorScenes {
    private final SceneMaker maker = new SceneMaker();

    FloorScene scene(Moment moment) {
        Scene scene = maker.scene(moment);
        Heard heard = moment.heard();
        Timeline timeline = heard.timeline();
        Optional<DancedCount> danced = timeline.at(heard.songSeconds());
        List<FloorScene.Block> blocks = new ArrayList<>();
        int block = danced.map(now -> blocks(timeline, now, blocks)).orElse(-1);
        String heading = scene.goal().isEmpty() ? scene.place().heading() : "then " + scene.goal();
        return new FloorScene(
                scene.now(),
                scene.next(),
                scene.pass().now().isEmpty()
                        ? scene.place().wall()
                        : scene.pass().now() + ": " + scene.place().wall(),
                scene.place().facing(),
                danced.map(now -> OptionalInt.of(now.facingAfter().degrees())).orElse(OptionalInt.empty()),
                scene.place().section(),
                heading,
                scene.place().eight().counts(),
                scene.place().eight().now(),
                blocks,
                block,
                scene.then(),
                scene.state(),
                scene.notice(),
                scene.motion() == PlayState.Motion.PAUSED || scene.motion() == PlayState.Motion.NO_DEVICE,
                partOfBeat(timeline, heard.songSeconds()));
    }

    /** Gathers the sections of the wall; gives the index of the one that is danced. */
    private static int blocks(Timeline timeline, DancedCount now, List<FloorScene.Block> into) {
        int current = -1;
        for (DancedCount count : timeline.countsOf(now.run())) {
            if (count.isFirstOfSection() || into.isEmpty()) {
                into.add(new FloorScene.Block(count.section().name(), 0));
            }
            FloorScene.Block last = into.get(into.size() - 1);
            into.set(
                    into.size() - 1,
                    new FloorScene.Block(
                            last.name(), last.counts() + (count.count().isWhole() ? 1 : 0)));
            current = count.equals(now) ? into.size() - 1 : current;
        }
        return current;
    }

    private static double partOfBeat(Timeline timeline, double songSeconds) {
        BeatPosition position = timeline.grid().positionAt(songSeconds);
        return Math.floorMod(position.ticks(), Beats.TICKS_PER_BEAT) / (double) Beats.TICKS_PER_BEAT;
    }
}
