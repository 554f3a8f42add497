package cuelead.cli;

import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.practice.SpokenCall;
import cuelead.steer.Told;
import cuelead.time.SampleRate;
import java.util.List;

/**
 * The call plan as comma-separated values, a line a call. All times are seconds from the first frame of the track
 * that the plan belongs to, which begins where {@code --from} says, so that they fit the written sound.
 */
final class PlanCsv {
    private static final List<String> COLUMNS = List.of(
            "word",
            "time",
            "beat",
            "start",
            "clip",
            "end",
            "kind",
            "lead_beats",
            "wall",
            "section",
            "count",
            "facing",
            "level");

    private final ClipNames clips;
    private final SampleRate rate;
    private final long originFrame;

    /** @param originFrame the frame of the song at which the track begins */
    PlanCsv(ClipNames clips, SampleRate rate, long originFrame) {
        this.clips = clips;
        this.rate = rate;
        this.originFrame = originFrame;
    }

    String print(List<SpokenCall> calls) {
        StringBuilder text = new StringBuilder(Csv.line(COLUMNS));
        calls.forEach(call -> text.append(line(call)));
        return text.toString();
    }

    private String line(SpokenCall spoken) {
        Call call = spoken.call();
        double origin = rate.secondsAt(originFrame);
        Csv csv = new Csv().add(call.words()).addSeconds(call.centreSeconds() - origin);
        call.beatSeconds().ifPresentOrElse(beat -> csv.addSeconds(beat - origin), () -> csv.add(""));
        return csv.addSeconds(rate.secondsAt(spoken.startFrame() - originFrame))
                .add(clips.of(call.words()))
                .addSeconds(call.endsSeconds() - origin)
                .add(call.kind().word())
                .add(Told.decimal(call.lead().toDecimal()))
                .add(call.wall())
                .add(call.section())
                .add(call.count().map(Count::label).orElse(""))
                .add(call.facing().clock())
                .add(call.level().word())
                .line();
    }
}
