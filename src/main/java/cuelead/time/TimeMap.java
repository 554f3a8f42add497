package cuelead.time;

import java.util.Arrays;

/**
 * Where each frame of a song is heard, and what is heard at each frame of the output: pieces of even speed, each going
 * on where the one before ends. Whole-number arithmetic, so both ways are exact: at a speed of 1 or below, the song
 * frame at the output frame of a song frame is that song frame; above 1, the same holds from the output's side. Both
 * ways never go back. Goes on evenly before its first piece and after its last.
 *
 * <p>Immutable; asking is realtime-safe.
 */
public final class TimeMap {
    /** So far away that frames before the song can be taken from it without overflow. */
    private static final long NEVER = Long.MAX_VALUE / 2;

    private final long[] outputFrames;
    /** In parts of a frame, {@link Speed#UNIT} a frame. */
    private final long[] songParts;

    private final int[] speeds;

    private TimeMap(long[] outputFrames, long[] songParts, int[] speeds) {
        this.outputFrames = outputFrames;
        this.songParts = songParts;
        this.speeds = speeds;
    }

    /** The whole song at one speed, both from their frame 0 on. */
    public static TimeMap even(Speed speed) {
        return from(0, 0, speed);
    }

    /** One speed, with a frame of the song on a frame of the output. */
    public static TimeMap from(long outputFrame, long songFrame, Speed speed) {
        return new TimeMap(new long[] {outputFrame}, new long[] {Math.multiplyExact(songFrame, Speed.UNIT)}, new int[] {
            speed.songFramesInUnit()
        });
    }

    /**
     * The same until a frame of the output, and another speed from there on. What was to be later is forgotten.
     *
     * @param outputFrame not before the beginning of the last piece
     */
    public TimeMap then(long outputFrame, Speed speed) {
        int last = speeds.length - 1;
        if (!canTurnAt(outputFrame)) {
            throw new IllegalArgumentException(
                    "a change at output frame " + outputFrame + ", before the last at " + outputFrames[last]);
        }
        boolean replaces = outputFrame == outputFrames[last];
        int pieces = replaces ? speeds.length : speeds.length + 1;
        long[] outputs = Arrays.copyOf(outputFrames, pieces);
        long[] songs = Arrays.copyOf(songParts, pieces);
        int[] rates = Arrays.copyOf(speeds, pieces);
        outputs[pieces - 1] = outputFrame;
        songs[pieces - 1] = partsAt(last, outputFrame);
        rates[pieces - 1] = speed.songFramesInUnit();
        return new TimeMap(outputs, songs, rates);
    }

    /** The frame of the song that is heard at a frame of the output: the last one not after it. */
    public long songFrameAt(long outputFrame) {
        return Math.floorDiv(songPartsAt(outputFrame), Speed.UNIT);
    }

    /** The place in the song that is heard at a frame of the output, in {@link Speed#UNIT} parts of a frame. */
    public long songPartsAt(long outputFrame) {
        return partsAt(pieceAtOutput(outputFrame), outputFrame);
    }

    /** The first frame of the output that is not before a frame of the song. */
    public long outputFrameAt(long songFrame) {
        long parts = songFrame * Speed.UNIT;
        int piece = speeds.length - 1;
        while (piece > 0 && songParts[piece] >= parts) {
            piece--;
        }
        long frame = outputFrames[piece] - Math.floorDiv(songParts[piece] - parts, speeds[piece]);
        return piece == speeds.length - 1 ? frame : Math.min(frame, outputFrames[piece + 1]);
    }

    /** Where between the frames of the output a place of the song between its frames is heard. */
    public double outputAt(double songFrame) {
        double parts = songFrame * Speed.UNIT;
        int piece = speeds.length - 1;
        while (piece > 0 && songParts[piece] > parts) {
            piece--;
        }
        return outputFrames[piece] + (parts - songParts[piece]) / speeds[piece];
    }

    /** Where between the frames of the song what is heard between frames of the output is. */
    public double songAt(double outputFrame) {
        int piece = pieceAtOutput((long) Math.floor(outputFrame));
        return (songParts[piece] + (outputFrame - outputFrames[piece]) * speeds[piece]) / Speed.UNIT;
    }

    /** The speed at a frame of the output. */
    public Speed speedAt(long outputFrame) {
        return new Speed(speeds[pieceAtOutput(outputFrame)]);
    }

    /** Whether its speed can change at a frame of the output: it has not changed after it. */
    public boolean canTurnAt(long outputFrame) {
        return outputFrame >= outputFrames[outputFrames.length - 1];
    }

    /** Whether each frame of the output is that frame of the song. */
    public boolean isOriginal() {
        return equals(even(Speed.ORIGINAL));
    }

    /** Whether the song is heard as it is at a frame of the output. Realtime-safe. */
    public boolean isOriginalAt(long outputFrame) {
        return speeds[pieceAtOutput(outputFrame)] == Speed.UNIT;
    }

    /** The first frame of the output of the piece of even speed that a frame belongs to. Realtime-safe. */
    public long pieceStart(long outputFrame) {
        int piece = pieceAtOutput(outputFrame);
        return piece == 0 ? Math.min(outputFrame, outputFrames[0]) : outputFrames[piece];
    }

    /** One past the last frame of the output of that piece. Realtime-safe. */
    public long pieceEnd(long outputFrame) {
        int piece = pieceAtOutput(outputFrame);
        return piece == speeds.length - 1 ? NEVER : outputFrames[piece + 1];
    }

    /** Whether another map has the same place and speed at a frame of the output. Realtime-safe. */
    public boolean isSame(TimeMap other, long outputFrame) {
        int piece = pieceAtOutput(outputFrame);
        int its = other.pieceAtOutput(outputFrame);
        return speeds[piece] == other.speeds[its] && partsAt(piece, outputFrame) == other.partsAt(its, outputFrame);
    }

    /** The speed that it ends with. */
    public Speed lastSpeed() {
        return new Speed(speeds[speeds.length - 1]);
    }

    /** Whether it is the whole song at one speed, both from their frame 0 on. */
    public boolean isEven() {
        return equals(even(lastSpeed()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TimeMap map
                && Arrays.equals(outputFrames, map.outputFrames)
                && Arrays.equals(songParts, map.songParts)
                && Arrays.equals(speeds, map.speeds);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(songParts) + Arrays.hashCode(speeds);
    }

    private int pieceAtOutput(long outputFrame) {
        int piece = speeds.length - 1;
        while (piece > 0 && outputFrames[piece] > outputFrame) {
            piece--;
        }
        return piece;
    }

    private long partsAt(int piece, long outputFrame) {
        return songParts[piece] + (outputFrame - outputFrames[piece]) * speeds[piece];
    }
}
