package cuelead.voice;

import cuelead.time.SampleRate;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * Clips in a folder, one file a call: a mark, a checksum of all that follows, the voice's key, the words, the marks, the
 * phones, the samples as floats. A file that does not read as that, or is for other words, counts as missing.
 */
final class ClipStore {
    private static final int MARK = 0x43554531; // "CUE1"
    private static final int HEAD_BYTES = Integer.BYTES + Long.BYTES;
    private static final int MOST_PHONES = 10_000;
    private static final int NAME_LETTERS = 40;

    private final Path folder;
    private final String voiceKey;

    ClipStore(Path folder, String voiceKey) {
        this.folder = folder;
        this.voiceKey = voiceKey;
    }

    Path folder() {
        return folder;
    }

    /** Whether there is a file for some words; what it holds shows when it is loaded. */
    boolean has(String words) {
        return Files.exists(file(words));
    }

    Optional<Clip> load(String words) {
        Path file = file(words);
        try {
            byte[] bytes = Files.readAllBytes(file);
            ByteBuffer head = ByteBuffer.wrap(bytes);
            if (bytes.length < HEAD_BYTES || head.getInt() != MARK || head.getLong() != checksum(head)) {
                return Optional.empty();
            }
            return read(new ByteArrayInputStream(bytes, HEAD_BYTES, bytes.length - HEAD_BYTES), words);
        } catch (NoSuchFileException notYet) {
            return Optional.empty();
        } catch (IOException | IllegalArgumentException unreadable) {
            return Optional.empty(); // the clip is made again, and the file with it
        }
    }

    void save(Clip clip) throws IOException {
        Files.createDirectories(folder);
        byte[] body = write(clip);
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + body.length);
        bytes.putInt(MARK).putLong(checksum(ByteBuffer.wrap(body))).put(body);
        Path partial = Files.createTempFile(folder, "new", ".part");
        try {
            Files.write(partial, bytes.array());
            move(partial, file(clip.words()));
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    private static void move(Path partial, Path file) throws IOException {
        try {
            Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(partial, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The words for people who look into the folder, and a checksum for words that look alike. */
    Path file(String words) {
        String readable = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String head = readable.substring(0, Math.min(NAME_LETTERS, readable.length()));
        byte[] exact = words.getBytes(StandardCharsets.UTF_8);
        return folder.resolve(head + "-" + Long.toHexString(checksum(ByteBuffer.wrap(exact))) + ".clip");
    }

    private byte[] write(Clip clip) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeUTF(voiceKey);
        out.writeUTF(clip.words());
        out.writeInt(clip.rate().hz());
        out.writeDouble(clip.onsetSeconds());
        out.writeDouble(clip.centreSeconds());
        out.writeDouble(clip.endSeconds());
        out.writeInt(clip.phones().size());
        for (Clip.Phone phone : clip.phones()) {
            out.writeUTF(phone.name());
            out.writeDouble(phone.startSeconds());
            out.writeDouble(phone.endSeconds());
        }
        ByteBuffer samples = ByteBuffer.allocate(clip.samples().length * Float.BYTES);
        samples.asFloatBuffer().put(clip.samples());
        out.write(samples.array());
        return bytes.toByteArray();
    }

    private Optional<Clip> read(ByteArrayInputStream bytes, String words) throws IOException {
        DataInputStream in = new DataInputStream(bytes);
        if (!in.readUTF().equals(voiceKey) || !in.readUTF().equals(words)) {
            return Optional.empty();
        }
        SampleRate rate = new SampleRate(in.readInt());
        double onset = in.readDouble();
        double centre = in.readDouble();
        double end = in.readDouble();
        int count = in.readInt();
        if (count < 0 || count > MOST_PHONES) {
            return Optional.empty();
        }
        List<Clip.Phone> phones = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            phones.add(new Clip.Phone(in.readUTF(), in.readDouble(), in.readDouble()));
        }
        float[] samples = new float[bytes.available() / Float.BYTES];
        ByteBuffer.wrap(in.readAllBytes()).asFloatBuffer().get(samples);
        return Optional.of(new Clip(words, rate, samples, onset, centre, end, phones));
    }

    private static long checksum(ByteBuffer bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes.duplicate());
        return crc.getValue();
    }
}
