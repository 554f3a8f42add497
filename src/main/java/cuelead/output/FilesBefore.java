package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Some small files as they were, or were not, so that they can be put back. */
public final class FilesBefore {
    private final Map<Path, Optional<byte[]>> contents;

    private FilesBefore(Map<Path, Optional<byte[]>> contents) {
        this.contents = contents;
    }

    /**
     * Remembers files, in memory.
     *
     * @param files may be missing
     * @throws Refused when one that is there cannot be read
     */
    public static FilesBefore of(List<Path> files) throws Refused {
        Map<Path, Optional<byte[]>> contents = new LinkedHashMap<>();
        for (Path file : files) {
            try {
                contents.put(file, Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty());
            } catch (IOException unreadable) {
                throw new Refused(file + " cannot be read: check that you may read it.", unreadable);
            }
        }
        return new FilesBefore(contents);
    }

    /**
     * Puts them back, those first that were there, and takes away those that were not.
     *
     * @throws Refused              when one cannot be written; each file is whole all the same
     * @throws InterruptedException when the thread is interrupted
     */
    public void putBack() throws Refused, InterruptedException {
        for (Map.Entry<Path, Optional<byte[]>> file : contents.entrySet()) {
            if (file.getValue().isPresent()) {
                ByteBuffer content = ByteBuffer.wrap(file.getValue().get());
                new WholeWriting(OpensChannel.ON_DISK).write(file.getKey(), channel -> {
                    while (content.hasRemaining()) {
                        channel.write(content);
                    }
                });
            }
        }
        for (Map.Entry<Path, Optional<byte[]>> file : contents.entrySet()) {
            if (file.getValue().isEmpty()) {
                try {
                    Files.deleteIfExists(file.getKey());
                } catch (IOException cannot) {
                    throw WriteFailure.refusal(file.getKey(), cannot);
                }
            }
        }
    }
}
