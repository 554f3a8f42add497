package cuelead.sound;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Chosen parts of a mix, exactly as the mix contains them before its limiter: the music with its dips, the calls,
 * the clicks. All the stems of a plan add up to it.
 *
 * <p>Not thread-safe. Reading is realtime-safe.
 */
public final class StemMix implements Sound {
    /** A part of a mix. */
    public enum Stem {
        MUSIC,
        VOICE,
        CLICK
    }

    private final MixPlan plan;
    private final Set<Stem> stems;
    private final boolean hasMusic;
    private final MusicReader music;
    private final MonoLane voice;
    private final MonoLane clicks;
    private long nextFrame;

    /** Those stems of the whole plan. */
    public StemMix(MixPlan plan, Set<Stem> stems) {
        this(plan, stems, plan.fromFrame());
    }

    /** @param startFrame the frame of the song to begin with */
    StemMix(MixPlan plan, Set<Stem> stems, long startFrame) {
        this.plan = plan;
        this.stems = Set.copyOf(stems);
        hasMusic = plan.music().isPresent();
        Music heard = plan.music().filter(any -> stems.contains(Stem.MUSIC)).orElseGet(() -> new Pcm(plan.rate(), 0));
        music = dipped(heard.reader(), plan);
        voice = new MonoLane(
                plan.clips(), plan.levels().voiceGain(), plan.levels().sides());
        clicks = new MonoLane(
                clickClips(plan), plan.levels().clickGain(), plan.levels().sides());
        nextFrame = startFrame;
    }

    private static MusicReader dipped(MusicReader music, MixPlan plan) {
        double gain = plan.levels().musicGain();
        return switch (plan.levels().dip().range()) {
            case WHOLE -> new WholeDip(music, plan.dip(), gain);
            case SPEECH_BAND -> new BandDip(music, plan.dip(), gain, plan.rate());
        };
    }

    private static List<PlacedClip> clickClips(MixPlan plan) {
        Map<ClickSound, float[]> samples = new EnumMap<>(ClickSound.class);
        for (ClickSound sound : ClickSound.values()) {
            samples.put(sound, sound.samples(plan.rate()));
        }
        return plan.clicks().stream()
                .map(click -> PlacedClip.whole(click.frame(), samples.get(click.sound())))
                .toList();
    }

    /** Realtime-safe. */
    boolean hasMusic() {
        return hasMusic;
    }

    /** Reads from another frame of the song next. Realtime-safe. */
    void seek(long frame) {
        nextFrame = frame;
    }

    /** Goes on where another mix is, which has been read up to a frame. Realtime-safe. */
    void goOnFrom(StemMix other, long frame) {
        music.goOnFrom(other.music, frame);
    }

    @Override
    public int read(float[] interleaved, int frames) {
        return read(interleaved, frames, MixPlan.playedFrames(nextFrame, plan.fromFrame()));
    }

    /**
     * Reads where the music did not begin with the plan.
     *
     * @param playedFrames how many frames of music were played before
     */
    int read(float[] interleaved, int frames, long playedFrames) {
        int wanted = (int) Math.max(0, Math.min(frames, plan.toFrame() - nextFrame));
        if (stems.contains(Stem.MUSIC)) {
            music.copy(nextFrame, interleaved, wanted);
            plan.start().applyTo(interleaved, wanted, playedFrames);
            plan.levels().sides().fold(interleaved, wanted);
        } else {
            Arrays.fill(interleaved, 0, wanted * CHANNELS, 0);
        }
        if (stems.contains(Stem.VOICE)) {
            voice.addTo(interleaved, wanted, nextFrame);
        }
        if (stems.contains(Stem.CLICK)) {
            clicks.addTo(interleaved, wanted, nextFrame);
        }
        nextFrame += wanted;
        return wanted;
    }
}
