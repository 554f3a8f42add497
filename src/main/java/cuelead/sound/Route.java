package cuelead.sound;

/**
 * How what a {@link LiveMix} has given lies on the song: pieces that begin at a frame of the output and go on evenly
 * from a frame of the song, each under the change that made it. One thread writes, any may read. The newest
 * {@value #MOST} pieces are kept.
 */
public final class Route {
    private static final int MOST = 1024;

    private final long[] outputFrames = new long[MOST];
    private final long[] songFrames = new long[MOST];
    private final int[] changes = new int[MOST];
    private volatile int pieces;

    Route() {}

    /**
     * A piece.
     *
     * @param outputFrame its first frame, counted from the first that the mix gave
     * @param songFrame   the frame of the song that this is
     * @param change      number of the change that led to it, see {@link Change#number}, or of the beginning
     */
    public record Piece(long outputFrame, long songFrame, int change) {
        /** The frame of the song at a frame of the output, were there no later piece. */
        public long songFrameAt(long output) {
            return songFrame + output - outputFrame;
        }
    }

    /** Realtime-safe. */
    void add(long outputFrame, long songFrame, int change) {
        int before = pieces;
        int at = before % MOST;
        outputFrames[at] = outputFrame;
        songFrames[at] = songFrame;
        changes[at] = change;
        pieces = before + 1;
    }

    /** The piece that a frame of the output belongs to. */
    public Piece pieceAt(long outputFrame) {
        int newest = pieces - 1;
        int oldest = Math.max(0, newest - MOST + 2); // the one before may be overwritten meanwhile
        int found = newest;
        while (found > oldest && outputFrames[found % MOST] > outputFrame) {
            found--;
        }
        return new Piece(outputFrames[found % MOST], songFrames[found % MOST], changes[found % MOST]);
    }

    /** The newest piece. */
    public Piece last() {
        return pieceAt(Long.MAX_VALUE);
    }
}
