package cuelead.song;

import cuelead.report.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A song file's content in short: its SHA-256. Renaming or moving a song does not change it.
 *
 * @param hex 64 lower-case digits
 */
public record SongHash(String hex) {
    private static final int BUFFER_BYTES = 1 << 16;

    public SongHash {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("not a SHA-256 in hex: " + hex);
        }
    }

    /** Reads the whole file. */
    public static SongHash of(Path file) throws Refused {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] bytes = new byte[BUFFER_BYTES];
            for (int got = in.read(bytes); got >= 0; got = in.read(bytes)) {
                digest.update(bytes, 0, got);
            }
            return new SongHash(HexFormat.of().formatHex(digest.digest()));
        } catch (IOException broken) {
            throw Refusals.unreadable(file, broken);
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }
}
