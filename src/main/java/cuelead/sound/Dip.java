package cuelead.sound;

import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How the music goes down under the calls: a line through break points (frame, dB), straight in decibels between
 * them, 0 dB before the first and after the last. A pure function of where the calls are audible. The music is
 * down shortly before a call begins, stays down across short gaps so that it does not pump, and comes back slowly.
 *
 * <p>Immutable. {@link #gains} is realtime-safe.
 */
public final class Dip {
    private static final double LOOK_AHEAD_SECONDS = 0.050;
    private static final double ATTACK_SECONDS = 0.040;
    private static final double RELEASE_SECONDS = 0.250;
    private static final double HELD_GAP_SECONDS = 1.0;

    private final long[] frames;
    private final double[] db;

    private Dip(long[] frames, double[] db) {
        this.frames = frames;
        this.db = db;
    }

    /** One break point of the line. */
    public record Point(long frame, double db) {}

    /**
     * The dip under some clips.
     *
     * @param depthDb how far down; 0 for none
     */
    public static Dip under(List<PlacedClip> clips, double depthDb, SampleRate rate) {
        List<Point> points = new ArrayList<>();
        if (depthDb > 0) {
            List<Span> spans = held(clips, rate.framesIn(HELD_GAP_SECONDS));
            for (Span span : spans) {
                long begin = span.fromFrame - rate.framesIn(LOOK_AHEAD_SECONDS);
                points.add(new Point(begin, 0));
                points.add(new Point(begin + rate.framesIn(ATTACK_SECONDS), -depthDb));
                points.add(new Point(span.toFrame, -depthDb));
                points.add(new Point(span.toFrame + rate.framesIn(RELEASE_SECONDS), 0));
            }
        }
        return new Dip(
                points.stream().mapToLong(Point::frame).toArray(),
                points.stream().mapToDouble(Point::db).toArray());
    }

    private record Span(long fromFrame, long toFrame) {
        Span until(long frame) {
            return new Span(fromFrame, Math.max(toFrame, frame));
        }
    }

    /** The audible spans in order, those with a short gap between them joined. */
    private static List<Span> held(List<PlacedClip> clips, long heldGapFrames) {
        List<Span> spans = new ArrayList<>();
        List<PlacedClip> inOrder = new ArrayList<>(clips);
        inOrder.sort(Comparator.comparingLong(PlacedClip::audibleStartFrame));
        for (PlacedClip clip : inOrder) {
            Span span = new Span(clip.audibleStartFrame(), clip.audibleEndFrame());
            int last = spans.size() - 1;
            if (last >= 0 && span.fromFrame - spans.get(last).toFrame < heldGapFrames) {
                spans.set(last, spans.get(last).until(span.toFrame));
            } else {
                spans.add(span);
            }
        }
        return spans;
    }

    /** The break points in order. */
    public List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < frames.length; i++) {
            points.add(new Point(frames[i], db[i]));
        }
        return List.copyOf(points);
    }

    /** The music's gain at a frame of the song, 0 dB or less. */
    public double dbAt(long frame) {
        int next = next(frame);
        return dbBefore(next, frame);
    }

    /** The first break point after a frame. */
    private int next(long frame) {
        int found = Arrays.binarySearch(frames, frame);
        return found >= 0 ? found + 1 : -found - 1;
    }

    private double dbBefore(int next, long frame) {
        if (isFlatBefore(next)) {
            return next == 0 || next == frames.length ? 0 : db[next];
        }
        double way = (double) (frame - frames[next - 1]) / (frames[next] - frames[next - 1]);
        return db[next - 1] + way * (db[next] - db[next - 1]);
    }

    private boolean isFlatBefore(int next) {
        return next == 0 || next == frames.length || db[next] == db[next - 1];
    }

    /**
     * The factors of some frames. Realtime-safe.
     *
     * @param into       they are written here, from its beginning
     * @param firstFrame the frame of the song that the first of them is
     * @param gain       what they are where nothing dips
     */
    void gains(float[] into, int count, long firstFrame, double gain) {
        int next = next(firstFrame);
        for (int done = 0; done < count; next++) {
            long left = next == frames.length ? Long.MAX_VALUE : frames[next] - firstFrame;
            int end = (int) Math.min(count, left);
            if (isFlatBefore(next)) {
                Arrays.fill(into, done, end, (float) (gain * Decibels.gain(dbBefore(next, firstFrame + done))));
            } else {
                for (int i = done; i < end; i++) {
                    into[i] = (float) (gain * Decibels.gain(dbBefore(next, firstFrame + i)));
                }
            }
            done = end;
        }
    }

    /** Mean over a span of frames of the factor by which the dip changes power, 0 to 1. */
    double meanPowerGain(long fromFrame, long toFrame) {
        double sum = 0;
        int next = next(fromFrame);
        for (long at = fromFrame; at < toFrame; next++) {
            long end = next == frames.length ? toFrame : Math.min(toFrame, frames[next]);
            double first = Decibels.powerGain(dbBefore(next, at));
            double last = isFlatBefore(next) ? first : Decibels.powerGain(dbBefore(next, end));
            // the mean of an exponential between its ends
            double mean = Math.abs(first - last) < 1e-9 ? first : (first - last) / Math.log(first / last);
            sum += mean * (end - at);
            at = end;
        }
        return toFrame > fromFrame ? sum / (toFrame - fromFrame) : 1;
    }
}
