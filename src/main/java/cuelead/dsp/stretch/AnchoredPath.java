package cuelead.dsp.stretch;

import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;

/**
 * The vocoder's way through the song: as fast as the song from shortly before each onset until shortly after it, exactly
 * at its place there, and evenly from one to the next (attacks at natural speed, what lies between making up for it:
 * Röbel 2003, "A new approach to transient processing in the phase vocoder"). It goes on to the frames asked for, never
 * back. Realtime-safe.
 */
final class AnchoredPath {
    private static final double LEAD_SECONDS = 0.0105;
    private static final double HOLD_SECONDS = 0.044;
    /** Without an onset it is back on the map after so long. */
    private static final double HORIZON_SECONDS = 0.2;

    private static final double MOST_HORIZONS = 1.5;
    /** Onsets nearer than that are passed over. */
    private static final int LEAST_FRAMES = 16;

    /** Of the gap between two onsets, what the lead and the even part between them take at least. */
    private static final double LEAD_SHARE = 0.2;

    private static final double BETWEEN_SHARE = 0.25;
    private static final double FIRST_LEAD_SHARE = 0.4;

    private final Onsets onsets;
    private final int lead;
    private final int hold;
    private final int horizon;

    private TimeMap map = TimeMap.even(Speed.ORIGINAL);
    private long fromOutput;
    private double fromSong;
    private long toOutput;
    private double toSong;
    private boolean isAtOnset;
    private long onset;
    private int next;

    AnchoredPath(Onsets onsets, SampleRate rate) {
        this.onsets = onsets;
        lead = rate.framesIn(LEAD_SECONDS);
        hold = rate.framesIn(HOLD_SECONDS);
        horizon = rate.framesIn(HORIZON_SECONDS);
    }

    /** Begins anywhere. */
    void begin(TimeMap newMap, long outputFrame, long songFrame) {
        map = newMap;
        next = onsets.countBefore(songFrame);
        goOnEvenly(outputFrame, (double) songFrame);
    }

    /** Takes the state of another that has the same onsets, on another map. */
    void set(AnchoredPath other, TimeMap newMap) {
        map = newMap;
        fromOutput = other.fromOutput;
        fromSong = other.fromSong;
        toOutput = other.toOutput;
        toSong = other.toSong;
        isAtOnset = other.isAtOnset;
        onset = other.onset;
        next = other.next;
    }

    /** Goes over to another map from a frame on that is not before the last one asked for. */
    void turn(long outputFrame) {
        double song = songAt(outputFrame);
        if (isAtOnset && onset <= song) {
            return; // what is struck is heard already
        }
        if (isAtOnset) {
            next--; // the onset that lies ahead has another place
        }
        goOnEvenly(outputFrame, song);
    }

    /** So long after a turn of the map it is on it again. */
    int settlingFrames() {
        return (int) Math.ceil(MOST_HORIZONS * horizon) + lead + hold;
    }

    /** Whether the last frame asked for is near an onset. */
    boolean isAtOnset() {
        return isAtOnset;
    }

    /** The onset that it is near, frame of the song. */
    long onset() {
        return onset;
    }

    /** The place in the song. */
    double songAt(long outputFrame) {
        while (outputFrame >= toOutput) {
            boolean isBeforeOnset =
                    !isAtOnset && next < onsets.count() && toOutput >= map.outputFrameAt(onsets.frame(next)) - lead;
            if (isBeforeOnset) {
                meetOnset();
            } else {
                goOnEvenly(toOutput, toSong);
            }
        }
        return fromSong + (toSong - fromSong) * (outputFrame - fromOutput) / (toOutput - fromOutput);
    }

    private void meetOnset() {
        onset = onsets.frame(next);
        long output = map.outputFrameAt(onset);
        double length = hold;
        if (next + 1 < onsets.count()) {
            long after = onsets.frame(next + 1);
            double gap = Math.min(after - onset, map.outputFrameAt(after) - output);
            length = Math.min(length, gap - Math.min(lead, LEAD_SHARE * gap) - BETWEEN_SHARE * gap);
        }
        isAtOnset = true;
        fromOutput = toOutput;
        fromSong = onset + (toOutput - output);
        toOutput = output + (long) length;
        toSong = onset + (long) length;
        next++;
    }

    private void goOnEvenly(long outputFrame, double songFrame) {
        isAtOnset = false;
        fromOutput = outputFrame;
        fromSong = songFrame;
        for (; next < onsets.count(); next++) {
            long coming = onsets.frame(next);
            long output = map.outputFrameAt(coming);
            if (output <= outputFrame + LEAST_FRAMES || coming <= songFrame + LEAST_FRAMES) {
                continue;
            }
            double gap = Math.min((double) (output - outputFrame), coming - songFrame);
            long before = (long) Math.min(lead, FIRST_LEAD_SHARE * gap);
            if (output - before - outputFrame > MOST_HORIZONS * horizon) {
                break;
            }
            toOutput = output - before;
            toSong = coming - before;
            return;
        }
        toOutput = outputFrame + horizon;
        toSong = (double) map.songPartsAt(toOutput) / Speed.UNIT;
    }
}
