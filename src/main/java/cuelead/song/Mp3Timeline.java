package cuelead.song;

import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The frames of an MP3 file on the timeline that its encoder meant: each slot is a frame of the file or one that
 * is missing, and the encoder's delay and padding lie outside {@link #skipFrames} and {@link #lengthFrames}.
 *
 * <p>Without an Info tag nothing is trimmed, as other players do.
 */
final class Mp3Timeline {
    /** A slot whose frame is not in the file. */
    static final int MISSING = -1;
    /** PCM frames by which every decoder of layer III lags: 528 of the filter bank and one more. */
    private static final int DECODER_DELAY = 529;

    private final Mp3Header header;
    private final int[] slots;
    private final long skipFrames;
    private final long lengthFrames;

    private Mp3Timeline(Mp3Header header, int[] slots, long skipFrames, long lengthFrames) {
        this.header = header;
        this.slots = slots;
        this.skipFrames = skipFrames;
        this.lengthFrames = lengthFrames;
    }

    /** Lays the frames out and says what is missing; empty when there is no frame of sound. */
    static Optional<Mp3Timeline> of(Mp3Scan scan, byte[] bytes, Findings findings) {
        if (scan.first().isEmpty()) {
            return Optional.empty();
        }
        Mp3Header header = scan.first().get();
        Optional<Mp3Tag> tag = scan.frames() == 0 ? Optional.empty() : Mp3Tag.of(bytes, scan.offset(0), header);
        int tagFrames = tag.isPresent() ? 1 : 0;
        int found = scan.frames() - tagFrames;
        if (found <= 0) {
            return Optional.empty();
        }
        int promised = promisedFrames(tag, found, scan);
        int[] missing = missingFrames(scan, promised - found);
        List<Integer> slots = new ArrayList<>();
        int hole = 0;
        for (int frame = tagFrames; frame <= scan.frames(); frame++) {
            while (hole < missing.length && scan.holes().get(hole).beforeFrame() == frame) {
                slots.addAll(java.util.Collections.nCopies(missing[hole++], MISSING));
            }
            if (frame < scan.frames()) {
                slots.add(scan.offset(frame));
            }
        }
        int there = slots.size();
        slots.addAll(java.util.Collections.nCopies(Math.max(0, promised - there), MISSING));
        Mp3Timeline timeline = trimmed(header, slots.stream().mapToInt(i -> i).toArray(), tag);
        timeline.report(there, scan.isCutShort(), findings);
        return Optional.of(timeline);
    }

    /** How many frames the song has: what the tag says, as far as it can be believed. */
    private static int promisedFrames(Optional<Mp3Tag> tag, int found, Mp3Scan scan) {
        int told = tag.map(Mp3Tag::frames)
                .filter(java.util.OptionalInt::isPresent)
                .map(java.util.OptionalInt::getAsInt)
                .orElse(found);
        boolean countsItself = !tag.map(Mp3Tag::isGapless).orElse(false)
                && told == found + 1
                && scan.holes().isEmpty()
                && !scan.isCutShort();
        return countsItself ? found : Math.max(told, found);
    }

    /** Frames missing in each hole: by its bytes, then by what the tag says is missing in all. */
    private static int[] missingFrames(Mp3Scan scan, int missingInAll) {
        List<Mp3Scan.Hole> holes = scan.holes();
        int[] missing = new int[holes.size()];
        if (holes.isEmpty()) {
            return missing;
        }
        long holeBytes = holes.stream().mapToLong(Mp3Scan.Hole::bytes).sum();
        int last = scan.frames() - 1;
        double frameBytes = (double) (scan.offset(last) - scan.offset(0) - holeBytes) / Math.max(1, last);
        int largest = 0;
        int sum = 0;
        for (int i = 0; i < missing.length; i++) {
            Mp3Scan.Hole hole = holes.get(i);
            missing[i] = (int) Math.max(hole.cutFrames(), Math.round(hole.bytes() / frameBytes));
            sum += missing[i];
            largest = hole.bytes() > holes.get(largest).bytes() ? i : largest;
        }
        if (missingInAll > 0 && !scan.isCutShort()) {
            missing[largest] = Math.max(0, missing[largest] + missingInAll - sum);
        }
        return missing;
    }

    private static Mp3Timeline trimmed(Mp3Header header, int[] slots, Optional<Mp3Tag> tag) {
        long all = (long) slots.length * header.samplesPerFrame();
        if (tag.isEmpty() || !tag.get().isGapless()) {
            return new Mp3Timeline(header, slots, 0, all);
        }
        long skip = (long) tag.get().delayFrames() + DECODER_DELAY;
        boolean isLonger = tag.get().frames().orElse(slots.length) < slots.length;
        long behind = isLonger ? 0 : Math.max(0L, tag.get().paddingFrames() - DECODER_DELAY);
        return new Mp3Timeline(header, slots, skip, Math.max(0, all - skip - behind));
    }

    private void report(int there, boolean isCutShort, Findings findings) {
        int from = 0;
        while (from < there) {
            int to = from;
            while (to < there && slots[to] == MISSING) {
                to++;
            }
            if (to > from) {
                findings.hole(rate(), songFrame(from), (long) (to - from) * header.samplesPerFrame());
            }
            from = to + 1;
        }
        if (slots.length > there) {
            findings.endsEarly(rate(), songFrame(there), lengthFrames);
        } else if (isCutShort) {
            findings.mayHaveBeenLonger(rate(), lengthFrames);
        }
    }

    SampleRate rate() {
        return new SampleRate(header.rateHz());
    }

    int samplesPerFrame() {
        return header.samplesPerFrame();
    }

    boolean isMono() {
        return header.isMono();
    }

    /** Decoded PCM frames to be dropped in front. */
    long skipFrames() {
        return skipFrames;
    }

    /** The song's length in PCM frames. */
    long lengthFrames() {
        return lengthFrames;
    }

    int slots() {
        return slots.length;
    }

    /** The byte at which a slot's frame begins, or {@link #MISSING}. */
    int offset(int slot) {
        return slots[slot];
    }

    /** The song's PCM frame at which a slot begins; a little below 0 for the first. */
    long songFrame(int slot) {
        return (long) slot * header.samplesPerFrame() - skipFrames;
    }

    @Override
    public String toString() {
        return header + " " + Arrays.stream(slots).filter(s -> s != MISSING).count() + " of " + slots.length;
    }
}
