package cuelead.sound;

/**
 * A mono sound at its place on the song's time line, heard equally on both sides.
 *
 * @param startFrame    where its first sample sounds, frames of the song; may lie before the song
 * @param mono          its samples at the mix's rate, full scale = 1; not to be changed, shared by equal clips
 * @param audibleFrom   its first audible sample
 * @param audibleTo     one past its last audible sample
 * @param gainDb        its own gain, on top of the mix's
 */
@SuppressWarnings("ArrayRecordComponent") // clips are compared by identity: equal words share one array
public record PlacedClip(long startFrame, float[] mono, int audibleFrom, int audibleTo, double gainDb) {
    public PlacedClip {
        if (audibleFrom < 0 || audibleFrom > audibleTo || audibleTo > mono.length) {
            throw new IllegalArgumentException(
                    "audible span [" + audibleFrom + ", " + audibleTo + ") of " + mono.length + " samples");
        }
    }

    /** A clip that is audible from its first sample to its last, at its own level. */
    public static PlacedClip whole(long startFrame, float[] mono) {
        return new PlacedClip(startFrame, mono, 0, mono.length, 0);
    }

    /** One past its last frame on the song's time line. */
    public long endFrame() {
        return startFrame + mono.length;
    }

    /** Its first audible frame on the song's time line. */
    public long audibleStartFrame() {
        return startFrame + audibleFrom;
    }

    /** One past its last audible frame on the song's time line. */
    public long audibleEndFrame() {
        return startFrame + audibleTo;
    }
}
