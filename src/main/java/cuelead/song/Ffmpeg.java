package cuelead.song;

import cuelead.report.Refused;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Formats that no Java library reads well (M4A/AAC, Opus, WMA), by the program {@code ffmpeg} where it is
 * installed. It runs twice, once to count the frames exactly and once to decode, so that neither a file nor a
 * second copy in memory is needed.
 */
final class Ffmpeg {
    private static final int COUNT_BYTES = 1 << 16;

    private final String command;

    /** @param command the program's name or path */
    Ffmpeg(String command) {
        this.command = command;
    }

    /**
     * Counts the frames and begins to decode; empty when there is no sound that can be read.
     *
     * @param says        what the file holds, for the sentence when the program is missing
     * @param mostSeconds a longer one is refused
     */
    Optional<Decoder> open(Path file, String says, int mostSeconds) throws Refused, IOException {
        long frames = frames(file, says, mostSeconds);
        if (frames == 0) {
            return Optional.empty();
        }
        Run decoding = start(file, says, mostSeconds);
        RawLayout layout = WavHeader.read(decoding.in).orElseThrow(() -> new IOException("ffmpeg gave no sound"));
        return Optional.of(new RawDecoder(decoding, layout, frames));
    }

    private long frames(Path file, String says, int mostSeconds) throws Refused, IOException {
        try (Run counting = start(file, says, mostSeconds)) {
            Optional<RawLayout> layout = WavHeader.read(counting.in);
            if (layout.isEmpty()) {
                return 0;
            }
            long frames = count(counting.in) / layout.get().frameBytes();
            if (layout.get().rate().secondsAt(frames) > mostSeconds) {
                throw Refusals.tooLong(file, "more than " + Clock.minutesSeconds(mostSeconds), mostSeconds);
            }
            return frames;
        } catch (EOFException nothing) {
            return 0;
        }
    }

    private Run start(Path file, String says, int mostSeconds) throws Refused {
        List<String> arguments = List.of(
                command,
                "-v",
                "quiet",
                "-nostdin",
                "-protocol_whitelist",
                "file,pipe",
                "-i",
                "file:" + file.toAbsolutePath(),
                "-map",
                "0:a:0",
                "-t",
                Integer.toString(mostSeconds + 1),
                "-f",
                "wav",
                "-c:a",
                "pcm_f32le",
                "pipe:1");
        try {
            return new Run(new ProcessBuilder(arguments)
                    .redirectError(Redirect.DISCARD)
                    .redirectInput(Redirect.PIPE)
                    .start());
        } catch (IOException missing) {
            throw new Refused(
                    file + " holds " + says + ", which is read with the program ffmpeg, and that is not installed: "
                            + "install it, or convert the file to MP3, FLAC or WAV.",
                    missing);
        }
    }

    private static long count(InputStream in) throws IOException {
        byte[] bytes = new byte[COUNT_BYTES];
        long count = 0;
        for (int got = in.read(bytes); got >= 0; got = in.read(bytes)) {
            count += got;
        }
        return count;
    }

    /** What the program writes; closing ends the program. */
    private static final class Run extends InputStream {
        private final Process process;
        private final InputStream in;

        Run(Process process) throws IOException {
            this.process = process;
            this.in = new BufferedInputStream(process.getInputStream(), COUNT_BYTES);
            process.getOutputStream().close();
        }

        @Override
        public int read() throws IOException {
            return in.read();
        }

        @Override
        public int read(byte[] bytes, int from, int count) throws IOException {
            return in.read(bytes, from, count);
        }

        @Override
        public void close() {
            process.destroyForcibly();
        }
    }
}
