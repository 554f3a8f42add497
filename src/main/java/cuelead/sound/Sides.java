package cuelead.sound;

/** On which sides of a stereo output the parts of a mix are heard. */
public enum Sides {
    /** Everything on both. */
    BOTH(1, 1),
    /** Calls and clicks on the left only, the music on the right only, in mono. */
    CALLS_LEFT(1, 0),
    /** Calls and clicks on the right only, the music on the left only, in mono. */
    CALLS_RIGHT(0, 1);

    private final float callsLeft;
    private final float callsRight;

    Sides(float callsLeft, float callsRight) {
        this.callsLeft = callsLeft;
        this.callsRight = callsRight;
    }

    /** Gain of calls and clicks on the left. Realtime-safe. */
    float callsLeft() {
        return callsLeft;
    }

    /** Gain of calls and clicks on the right. Realtime-safe. */
    float callsRight() {
        return callsRight;
    }

    /** Takes the music from the side of the calls, and gives the other side both of its channels. Realtime-safe. */
    void fold(float[] interleaved, int frames) {
        if (this == BOTH) {
            return;
        }
        int music = this == CALLS_LEFT ? 1 : 0;
        for (int i = 0; i < frames * Sound.CHANNELS; i += Sound.CHANNELS) {
            float mono = (interleaved[i] + interleaved[i + 1]) / 2;
            interleaved[i + music] = mono;
            interleaved[i + 1 - music] = 0;
        }
    }
}
