package cuelead.dsp.stretch;

import cuelead.time.SampleRate;
import cuelead.time.TimeMap;

/** The attacks that are near: cut out of the song ahead, put into the output at their places. Realtime-safe. */
final class AttackLane {
    /** More than lie between the window's beginning and its end; others are left to the vocoder. */
    private static final int MOST = 24;

    private final SongSamples song;
    private final Onsets onsets;
    private final AttackCutter cutter;
    private final int window;
    private final int hop;
    private final Attack[] attacks = new Attack[MOST];
    private int next;

    AttackLane(SongSamples song, Onsets onsets, SampleRate rate, int window, int hop) {
        this.song = song;
        this.onsets = onsets;
        this.window = window;
        this.hop = hop;
        cutter = new AttackCutter(rate);
        for (int i = 0; i < MOST; i++) {
            attacks[i] = cutter.blank();
        }
    }

    void begin(long songFrame) {
        next = onsets.countBefore(songFrame);
        for (Attack attack : attacks) {
            attack.release();
        }
    }

    void set(AttackLane other) {
        next = other.next;
        for (int i = 0; i < MOST; i++) {
            attacks[i].set(other.attacks[i]);
        }
    }

    /** Those behind a frame of the output have yet to be given their places on another map. */
    void turn(long outputFrame) {
        for (Attack attack : attacks) {
            if (!attack.isFree() && attack.isPlaced() && attack.outputFrame() > outputFrame) {
                attack.take(attack.songFrame());
            }
        }
    }

    /** Cuts all that a window centred on a frame of the song may hold. */
    void load(long centreSongFrame) {
        while (next < onsets.count() && onsets.frame(next) < centreSongFrame + window / 2 + 2L * hop) {
            long after = next + 1 < onsets.count() ? onsets.frame(next + 1) : Long.MAX_VALUE / 2;
            for (Attack attack : attacks) {
                if (attack.isFree()) {
                    cutter.cut(song, onsets.frame(next), after, attack);
                    break;
                }
            }
            next++;
        }
    }

    /** Gives those that a window has come near to their places on a map. */
    void place(long centreSongFrame, TimeMap map) {
        for (Attack attack : attacks) {
            if (!attack.isFree() && !attack.isPlaced() && attack.songFrame() - hop <= centreSongFrame) {
                attack.place(map.outputFrameAt(attack.songFrame()));
            }
        }
    }

    /** Gives those that a window has come to their places, where the output goes with the song. */
    void placeBeside(long centreSongFrame, long centreOutputFrame) {
        for (Attack attack : attacks) {
            if (!attack.isFree() && !attack.isPlaced() && attack.songFrame() <= centreSongFrame) {
                attack.place(centreOutputFrame + attack.songFrame() - centreSongFrame);
            }
        }
    }

    /** Overwrites frames with the song less its attacks. */
    void copyRest(long fromSongFrame, float[] interleaved, int count) {
        song.copy(fromSongFrame, interleaved, count);
        for (Attack attack : attacks) {
            if (!attack.isFree()) {
                attack.takeFrom(interleaved, fromSongFrame, count);
            }
        }
    }

    /**
     * Adds the attacks to frames of the output, and forgets those that are over.
     *
     * @param centreSongFrame centre of the last window
     */
    void addTo(float[] interleaved, long outputFrame, int count, long centreSongFrame) {
        for (Attack attack : attacks) {
            if (!attack.isFree() && attack.isPlaced()) {
                attack.addTo(interleaved, outputFrame, count);
                boolean isHeard = attack.outputEndFrame() <= outputFrame + count;
                if (isHeard && attack.songEndFrame() < centreSongFrame - window) {
                    attack.release();
                }
            }
        }
    }
}
