package cuelead.sound;

import java.util.List;

/**
 * Mono sounds at their places, all at one gain, added to the sides of the calls. Keeps no position, so it answers for any
 * frames in any order. Immutable; {@link #addTo} is realtime-safe.
 */
final class MonoLane {
    private final PlacedClip[] clips;
    private final float[] gains;
    private final Sides sides;
    private final long longestFrames;

    /** @param clips in order of their start */
    MonoLane(List<PlacedClip> clips, double gain, Sides sides) {
        this.sides = sides;
        this.clips = clips.toArray(new PlacedClip[0]);
        gains = new float[this.clips.length];
        long longest = 0;
        for (int i = 0; i < gains.length; i++) {
            gains[i] = (float) (gain * Decibels.gain(this.clips[i].gainDb()));
            longest = Math.max(longest, this.clips[i].mono().length);
        }
        longestFrames = longest;
    }

    /** Adds what sounds in some frames of the song. */
    void addTo(float[] interleaved, int frames, long firstFrame) {
        long end = firstFrame + frames;
        for (int i = firstStartingAt(firstFrame - longestFrames); i < clips.length; i++) {
            PlacedClip clip = clips[i];
            if (clip.startFrame() >= end) {
                return;
            }
            float[] mono = clip.mono();
            int from = (int) Math.max(0, firstFrame - clip.startFrame());
            int to = (int) Math.min(mono.length, end - clip.startFrame());
            int at = (int) (clip.startFrame() + from - firstFrame) * Sound.CHANNELS;
            float left = gains[i] * sides.callsLeft();
            float right = gains[i] * sides.callsRight();
            for (int sample = from; sample < to; sample++) {
                interleaved[at++] += mono[sample] * left;
                interleaved[at++] += mono[sample] * right;
            }
        }
    }

    private int firstStartingAt(long frame) {
        int low = 0;
        int high = clips.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (clips[middle].startFrame() < frame) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
