package cuelead.sound;

import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All that a mix is made of, known before it sounds. One time line: frames of the song, 0 its first; without a
 * song 0 is where the caller says. Equal plans give equal samples.
 *
 * @param rate      frames a second of everything in it
 * @param music     the song, or the same slower or faster, on this time line
 * @param clips     the calls, in order of their start
 * @param clicks    the clicks, in order
 * @param levels    how loud each part is
 * @param fromFrame the first frame of the mix; before the song where a count-in needs it
 * @param toFrame   one past its last
 * @param start     how the music comes in where playing begins
 */
public record MixPlan(
        SampleRate rate,
        Optional<Music> music,
        List<PlacedClip> clips,
        List<ClickAt> clicks,
        Levels levels,
        long fromFrame,
        long toFrame,
        GentleStart start) {
    /** With music that is there at once. */
    public MixPlan(
            SampleRate rate,
            Optional<Music> music,
            List<PlacedClip> clips,
            List<ClickAt> clicks,
            Levels levels,
            long fromFrame,
            long toFrame) {
        this(rate, music, clips, clicks, levels, fromFrame, toFrame, GentleStart.NONE);
    }

    public MixPlan {
        if (fromFrame > toFrame) {
            throw new IllegalArgumentException("a mix from frame " + fromFrame + " to frame " + toFrame);
        }
        if (music.isPresent() && !music.get().rate().equals(rate)) {
            throw new IllegalArgumentException("music at " + music.get().rate() + " in a mix at " + rate);
        }
        clips = sorted(clips, Comparator.comparingLong(PlacedClip::startFrame));
        clicks = sorted(clicks, Comparator.comparingLong(ClickAt::frame));
    }

    /** From the beginning of the song, or of what sounds before it, to the end of whatever ends last. */
    public static MixPlan whole(
            SampleRate rate, Optional<Music> music, List<PlacedClip> clips, List<ClickAt> clicks, Levels levels) {
        long clickFrames = ClickSound.PLAIN.samples(rate).length;
        long from = 0;
        long to = music.map(Music::lengthFrames).orElse(0L);
        for (PlacedClip clip : clips) {
            from = Math.min(from, clip.startFrame());
            to = Math.max(to, clip.endFrame());
        }
        for (ClickAt click : clicks) {
            from = Math.min(from, click.frame());
            if (music.isEmpty()) {
                to = Math.max(to, click.frame() + clickFrames);
            }
        }
        return new MixPlan(rate, music, clips, clicks, levels, from, to);
    }

    private static <T> List<T> sorted(List<T> things, Comparator<T> order) {
        List<T> inOrder = new ArrayList<>(things);
        inOrder.sort(order);
        return List.copyOf(inOrder);
    }

    /** The same, only that part of it that lies between two frames of the song. */
    public MixPlan between(long from, long to) {
        long begin = Math.min(Math.max(from, fromFrame), toFrame);
        return new MixPlan(rate, music, clips, clicks, levels, begin, Math.max(begin, Math.min(to, toFrame)), start);
    }

    /** The same at other levels. */
    public MixPlan withLevels(Levels other) {
        return new MixPlan(rate, music, clips, clicks, other, fromFrame, toFrame, start);
    }

    /** The same with other calls. */
    public MixPlan withClips(List<PlacedClip> other) {
        return new MixPlan(rate, music, other, clicks, levels, fromFrame, toFrame, start);
    }

    /** The same without the calls that begin before a frame of the song. */
    public MixPlan withoutClipsBefore(long frame) {
        return withClips(
                clips.stream().filter(clip -> clip.startFrame() >= frame).toList());
    }

    /** The same with music that comes in another way. */
    public MixPlan with(GentleStart other) {
        return new MixPlan(rate, music, clips, clicks, levels, fromFrame, toFrame, other);
    }

    /** How many frames of music are played before a frame of the song, where playing begins with another frame. */
    static long playedFrames(long frame, long firstFrame) {
        return frame - Math.max(0, firstFrame);
    }

    public long lengthFrames() {
        return toFrame - fromFrame;
    }

    /** How the music goes down under the calls of this plan. */
    public Dip dip() {
        return Dip.under(clips, levels.dipDb(), rate);
    }
}
