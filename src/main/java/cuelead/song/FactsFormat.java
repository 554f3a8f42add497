package cuelead.song;

import cuelead.sound.MusicPowers;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/** {@link SongFacts} as bytes: a mark with the version, the facts, and a check sum over both. */
final class FactsFormat {
    /** "CLS" and the version. Raise it whenever a measure or the layout changes. */
    private static final int MARK = 0x434c_5302;

    private static final int CHECK_BYTES = Long.BYTES;
    private static final int NO_BEATS = 0;

    private FactsFormat() {}

    static byte[] encode(SongFacts facts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(MARK);
        out.writeInt(facts.rate().hz());
        out.writeLong(facts.lengthFrames());
        out.writeDouble(facts.loudness().samplePeak());
        out.writeDouble(facts.loudness().truePeakDbtp());
        MusicPowers powers = facts.loudness().powers();
        out.writeInt(powers.blocks());
        for (int i = 0; i < powers.blocks(); i++) {
            out.writeFloat(powers.whole(i));
            out.writeFloat(powers.band(i));
        }
        out.writeInt(facts.beats().map(BeatGrid::size).orElse(NO_BEATS));
        if (facts.beats().isPresent()) {
            writeBeats(out, facts.beats().get());
        }
        out.writeLong(checkSum(bytes.toByteArray(), bytes.size()));
        return bytes.toByteArray();
    }

    /** Reads facts back; empty for bytes that are damaged or of another version */
    static Optional<SongFacts> decode(byte[] bytes) throws IOException {
        int end = bytes.length - CHECK_BYTES;
        if (end < Integer.BYTES) {
            return Optional.empty();
        }
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        DataInputStream check = new DataInputStream(new ByteArrayInputStream(bytes, end, CHECK_BYTES));
        if (in.readInt() != MARK || check.readLong() != checkSum(bytes, end)) {
            return Optional.empty();
        }
        SampleRate rate = new SampleRate(in.readInt());
        long lengthFrames = in.readLong();
        double samplePeak = in.readDouble();
        double truePeakDbtp = in.readDouble();
        float[] whole = new float[in.readInt()];
        float[] band = new float[whole.length];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = in.readFloat();
            band[i] = in.readFloat();
        }
        int beats = in.readInt();
        Optional<BeatGrid> grid = beats == NO_BEATS ? Optional.empty() : Optional.of(readBeats(in, beats));
        MusicPowers powers = new MusicPowers(whole, band);
        return Optional.of(new SongFacts(rate, lengthFrames, new SongLoudness(powers, samplePeak, truePeakDbtp), grid));
    }

    private static void writeBeats(DataOutputStream out, BeatGrid beats) throws IOException {
        for (int i = 0; i < beats.size(); i++) {
            out.writeDouble(beats.beatSeconds(i));
            out.writeInt(beats.beatInBar(i));
            out.writeInt(beats.countInPhrase(i));
        }
    }

    private static BeatGrid readBeats(DataInputStream in, int beats) throws IOException {
        double[] seconds = new double[beats];
        int[] inBar = new int[beats];
        int[] inPhrase = new int[beats];
        for (int i = 0; i < beats; i++) {
            seconds[i] = in.readDouble();
            inBar[i] = in.readInt();
            inPhrase[i] = in.readInt();
        }
        return new BeatGrid(seconds, inBar, inPhrase);
    }

    private static long checkSum(byte[] bytes, int end) {
        CRC32 sum = new CRC32();
        sum.update(Arrays.copyOf(bytes, end));
        return sum.getValue();
    }
}
