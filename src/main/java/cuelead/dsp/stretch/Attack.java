package cuelead.dsp.stretch;

/** One attack cut out of the song, at its place there and in the output; used again and again. Realtime-safe. */
final class Attack {
    private static final long NOWHERE = Long.MIN_VALUE;

    private final float[] samples;
    private final int leadFrames;
    private long songFrame;
    private long outputFrame = NOWHERE;
    private boolean isFree = true;

    /** @param leadFrames by how much it begins before its onset */
    Attack(int frames, int leadFrames) {
        samples = new float[2 * frames];
        this.leadFrames = leadFrames;
    }

    int frames() {
        return samples.length / 2;
    }

    /** Its samples, left, right, left ... */
    float[] samples() {
        return samples;
    }

    boolean isFree() {
        return isFree;
    }

    void release() {
        isFree = true;
    }

    /** Begins to stand for the onset at a frame of the song, with no place in the output yet. */
    void take(long onsetSongFrame) {
        isFree = false;
        songFrame = onsetSongFrame;
        outputFrame = NOWHERE;
    }

    void set(Attack other) {
        System.arraycopy(other.samples, 0, samples, 0, samples.length);
        isFree = other.isFree;
        songFrame = other.songFrame;
        outputFrame = other.outputFrame;
    }

    boolean isPlaced() {
        return outputFrame != NOWHERE;
    }

    void place(long onsetOutputFrame) {
        outputFrame = onsetOutputFrame;
    }

    /** Frame of its onset in the output; it must be placed. */
    long outputFrame() {
        return outputFrame;
    }

    /** Frame of its onset in the song. */
    long songFrame() {
        return songFrame;
    }

    long songEndFrame() {
        return songFrame - leadFrames + frames();
    }

    /** One past its last frame in the output. */
    long outputEndFrame() {
        return outputFrame - leadFrames + frames();
    }

    /** Takes it out of frames of the song. */
    void takeFrom(float[] interleaved, long bufferSongFrame, int count) {
        add(interleaved, bufferSongFrame, count, songFrame - leadFrames, -1);
    }

    /** Puts it into frames of the output. */
    void addTo(float[] interleaved, long bufferOutputFrame, int count) {
        add(interleaved, bufferOutputFrame, count, outputFrame - leadFrames, 1);
    }

    private void add(float[] interleaved, long bufferFrame, int count, long begin, float factor) {
        int from = (int) Math.max(0, Math.min(count, begin - bufferFrame));
        int to = (int) Math.max(0, Math.min(count, begin + frames() - bufferFrame));
        int shift = 2 * (int) (bufferFrame - begin);
        for (int i = 2 * from; i < 2 * to; i++) {
            interleaved[i] += factor * samples[i + shift];
        }
    }
}
