package cuelead.compose;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** Samples to MP3 with the program lame: 128 kbit/s joint stereo, its gapless tag and an ID3 title. */
final class Mp3Encoder {
    private static final String ARTIST = "Cuelead demo band";
    private static final String ALBUM = "The Tuesday class";
    private static final String HOW_TO_GET_IT = "install it (Debian: apt install lame).";

    private Mp3Encoder() {}

    /**
     * Writes an MP3 file, all or nothing.
     *
     * @param stereo interleaved, within -1 and 1
     * @param folder for passing files; the caller deletes it
     */
    static void write(float[] stereo, String title, Path target, Path folder) throws Refused {
        Path raw = folder.resolve("master.raw");
        Path part = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            Files.write(raw, integers(stereo));
            Tool.run(command(raw, part, title), HOW_TO_GET_IT);
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new Refused("The song " + target + " cannot be written: " + e.getMessage(), e);
        } finally {
            deleteQuietly(part);
        }
    }

    private static void deleteQuietly(Path part) {
        part.toFile().delete();
    }

    private static List<String> command(Path raw, Path part, String title) {
        return List.of(
                "lame",
                "--quiet",
                "-r",
                "-s",
                Double.toString(Renderer.RATE.hz() / 1000.0),
                "--bitwidth",
                "32",
                "--signed",
                "--little-endian",
                "-m",
                "j",
                "-b",
                "128",
                "-q",
                "2",
                "--noreplaygain",
                "--id3v2-only",
                "--tt",
                title,
                "--ta",
                ARTIST,
                "--tl",
                ALBUM,
                raw.toString(),
                part.toString());
    }

    private static byte[] integers(float[] stereo) {
        ByteBuffer bytes = ByteBuffer.allocate(stereo.length * Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        for (float sample : stereo) {
            bytes.putInt((int) Math.round((double) sample * Integer.MAX_VALUE));
        }
        return bytes.array();
    }
}
