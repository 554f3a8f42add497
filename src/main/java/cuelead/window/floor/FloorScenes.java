package cuelead.window.floor;

import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.practice.Heard;
import cuelead.steer.Moment;
import cuelead.steer.PlayState;
import cuelead.steer.Scene;
import cuelead.steer.SceneMaker;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes of what is heard what stands on the floor view. Used on one thread. */
final class FloorScenes {
    private final SceneMaker maker = new SceneMaker();
    private final IdentityHashMap<DancedCount, Integer> blockOf = new IdentityHashMap<>();
    private Optional<Run> gathered = Optional.empty();
    private Optional<Timeline> laid = Optional.empty();
    private List<FloorScene.Block> blocks = List.of();

    FloorScene scene(Moment moment) {
        Scene scene = maker.scene(moment);
        Heard heard = moment.heard();
        Timeline timeline = heard.timeline();
        Optional<DancedCount> danced = timeline.at(heard.songSeconds());
        danced.ifPresent(now -> gather(timeline, now.run()));
        int block = danced.map(now -> blockOf.getOrDefault(now, -1)).orElse(-1);
        String heading = heading(scene);
        return new FloorScene(
                scene.now(),
                scene.next(),
                scene.pass().now().isEmpty()
                        ? scene.place().wall()
                        : scene.pass().count() + scene.pass().time() + ": "
                                + scene.place().wall(),
                scene.place().facing(),
                danced.map(now -> OptionalInt.of(now.facingAfter().degrees())).orElse(OptionalInt.empty()),
                scene.place().section(),
                heading,
                scene.place().eight().counts(),
                scene.place().eight().now(),
                danced.isPresent() ? blocks : List.of(),
                block,
                scene.then(),
                scene.state(),
                scene.notice(),
                scene.motion() == PlayState.Motion.PAUSED || scene.motion() == PlayState.Motion.NO_DEVICE,
                partOfBeat(timeline, heard.songSeconds()));
    }

    private static String heading(Scene scene) {
        if (scene.pass().pass() > 0) {
            return scene.pass().what();
        }
        return scene.goal().isEmpty() ? scene.place().heading() : "then " + scene.goal();
    }

    /** Gathers the sections of a wall, once; another timeline is another object, and to compare all of it would take long. */
    @SuppressWarnings("ReferenceEquality")
    private void gather(Timeline timeline, Run run) {
        if (gathered.filter(run::equals).isPresent()
                && laid.filter(before -> before == timeline).isPresent()) {
            return;
        }
        gathered = Optional.of(run);
        laid = Optional.of(timeline);
        blockOf.clear();
        List<FloorScene.Block> all = new ArrayList<>();
        for (DancedCount count : timeline.countsOf(run)) {
            if (count.isFirstOfSection() || all.isEmpty()) {
                all.add(new FloorScene.Block(count.section().name(), 0));
            }
            int last = all.size() - 1;
            FloorScene.Block block = all.get(last);
            all.set(
                    last,
                    new FloorScene.Block(
                            block.name(), block.counts() + (count.count().isWhole() ? 1 : 0)));
            blockOf.put(count, last);
        }
        blocks = List.copyOf(all);
    }

    private static double partOfBeat(Timeline timeline, double songSeconds) {
        BeatPosition position = timeline.grid().positionAt(songSeconds);
        return Math.floorMod(position.ticks(), Beats.TICKS_PER_BEAT) / (double) Beats.TICKS_PER_BEAT;
    }
}
