package cuelead.cli;

import cuelead.FakeSpeakers;
import cuelead.output.DeviceName;
import cuelead.practice.Places;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.steer.SoundDevices;
import cuelead.time.SampleRate;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
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

    static final DeviceName HALL = new DeviceName("OpenAL Soft on Hall speaker");
    static final DeviceName EAR = new DeviceName("OpenAL Soft on Left earphone");
    static final DeviceName TAKEN = new DeviceName("OpenAL Soft on Desk speaker");

    static final DeviceName DESK_MICROPHONE = new DeviceName("Desk microphone");
    static final DeviceName HEADSET = new DeviceName("Headset");

    private final Path cache;
    private final Path working;
    private final Path temporary;
    private final Device device;
    private Optional<Microphone> microphone = Optional.empty();
    private Terminal terminal = Terminal.NONE;
    final List<FakeSpeakers> opened = new ArrayList<>();
    final List<Optional<DeviceName>> openedNames = new ArrayList<>();

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
        this.device = device;
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

    /** A hall's loudspeaker, which is the usual one, an earphone, and one that another program has. */
    private final class FakeDevices implements SoundDevices {
        @Override
        public List<DeviceName> names() {
            return device == Device.THERE ? List.of(HALL, EAR, TAKEN) : List.of();
        }

        @Override
        public Optional<DeviceName> usual() {
            return names().stream().findFirst();
        }

        @Override
        public List<DeviceName> microphones() {
            return device == Device.THERE ? List.of(DESK_MICROPHONE, HEADSET) : List.of();
        }

        @Override
        public Optional<DeviceName> usualMicrophone() {
            return microphones().stream().findFirst();
        }

        @Override
        public Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused {
            if (microphone.isPresent()) {
                return microphone.get();
            }
            throw new Refused(
                    "No microphone" + name.map(named -> ", " + named.told()).orElse("") + ".");
        }

        @Override
        public Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused {
            if (device == Device.NONE) {
                throw new Refused("No device.");
            }
            if (name.equals(Optional.of(TAKEN))) {
                throw new Refused("Taken.");
            }
            FakeSpeakers speakers = new FakeSpeakers(rate);
            speakers.breakOff(2);
            if (!opened.isEmpty()) {
                opened.get(0).hearBeside(speakers);
            }
            opened.add(speakers);
            openedNames.add(name);
            return speakers;
        }
    }

    /** From now on there is a microphone that works. */
    void plugIn(Microphone working) {
        microphone = Optional.of(working);
    }

    /** From now on its streams lead to a terminal. */
    void sitDownAtATerminal() {
        terminal = new Terminal(Terminal.End.TERMINAL, Terminal.End.TERMINAL, Terminal.End.TERMINAL);
    }

    Outcome run(String... arguments) {
        return runReading(NOT_TO_BE_READ, arguments);
    }

    /** With something to read on standard input. */
    Outcome runReading(InputStream in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exitCode = CueleadCommand.run(surroundings(in, out, err), arguments);
        return new Outcome(exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    Surroundings surroundings(InputStream in, OutputStream out, OutputStream err) {
        return new Surroundings(
                in,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                terminal,
                Map.of(),
                new Places(cache, working),
                cache,
                temporary,
                Optional.empty(),
                new FakeDevices());
    }
}
