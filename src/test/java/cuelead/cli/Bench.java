package cuelead.cli;

import cuelead.FakeSpeakers;
import cuelead.practice.Places;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs the program with caught output, no terminal, no device, and an input that must not be read. */
final class Bench {
    static final Path PROJECT = Path.of("").toAbsolutePath();
    static final String DEMO_SHEET = PROJECT.resolve(DemoFiles.SHEET).toString();

    private static final InputStream NOT_TO_BE_READ = new InputStream() {
        @Override
        public int read() {
            throw new AssertionError("input that is no terminal was read");
        }

        @Override
        public int read(byte[] into, int from, int length) {
            return read();
        }
    };

    private final Path cache;
    private final Path working;
    private final Path temporary;
    private final OpensSpeakers opens;
    final List<FakeSpeakers> opened = new ArrayList<>();

    private enum Device {
        THERE,
        NONE
    }

    /** What came of a run. */
    record Outcome(int exitCode, String out, String err) {}

    private Bench(Path cache, Path working, Path temporary, Device device) {
        this.cache = cache;
        this.working = working;
        this.temporary = temporary;
        opens = device == Device.THERE ? this::open : Bench::none;
    }

    static Bench withoutDevice(Path folder) {
        return new Bench(folder.resolve("cache"), PROJECT, folder, Device.NONE);
    }

    static Bench withDevice(Path folder) {
        return new Bench(folder.resolve("cache"), PROJECT, folder, Device.THERE);
    }

    static Bench workingIn(Path folder) {
        return new Bench(folder.resolve("cache"), folder, folder, Device.NONE);
    }

    private Speakers open(SampleRate rate) {
        FakeSpeakers speakers = new FakeSpeakers(rate);
        speakers.breakOff(2);
        opened.add(speakers);
        return speakers;
    }

    private static Speakers none(SampleRate rate) throws Refused {
        throw new Refused("No device; use cuelead render.");
    }

    Outcome run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings surroundings = new Surroundings(
                NOT_TO_BE_READ,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Terminal.NONE,
                Map.of(),
                new Places(cache, working),
                temporary,
                Optional.empty(),
                opens);
        int exitCode = CueleadCommand.run(surroundings, arguments);
        return new Outcome(exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
