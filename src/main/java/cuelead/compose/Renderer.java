package cuelead.compose;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;

/** MIDI to sound with the program fluidsynth and a General MIDI sound font. */
final class Renderer {
    static final SampleRate RATE = new SampleRate(44_100);
    static final int CHANNELS = 2;

    private static final int ALL_IN_TRACKS = 1;
    private static final String HOW_TO_GET_IT = "install it (Debian: apt install fluidsynth fluid-soundfont-gm).";

    private final Path soundFont;

    Renderer(Path soundFont) {
        this.soundFont = soundFont;
    }

    /**
     * Renders a sequence from its first tick.
     *
     * @param folder for passing files; the caller deletes it
     * @return interleaved stereo at {@link #RATE}, not levelled, full scale 1 may be exceeded
     */
    float[] render(Sequence sequence, Path folder) throws Refused {
        Path midi = folder.resolve("song.mid");
        Path raw = folder.resolve("song.raw");
        try {
            MidiSystem.write(sequence, ALL_IN_TRACKS, midi.toFile());
            Tool.run(command(midi, raw), HOW_TO_GET_IT);
            return floats(Files.readAllBytes(raw));
        } catch (IOException e) {
            throw new Refused("The song cannot be rendered in " + folder + ": " + e.getMessage(), e);
        }
    }

    /** One core and one thread: the voices are then summed in the same order every time. */
    private List<String> command(Path midi, Path raw) {
        return List.of(
                "fluidsynth",
                "-ni",
                "-q",
                "-g",
                "0.5",
                "-r",
                Integer.toString(RATE.hz()),
                "-o",
                "synth.cpu-cores=1",
                "-o",
                "synth.polyphony=512",
                "-o",
                "synth.reverb.room-size=0.5",
                "-o",
                "synth.reverb.damp=0.4",
                "-o",
                "synth.reverb.width=0.8",
                "-o",
                "synth.reverb.level=0.6",
                "-o",
                "synth.chorus.active=0",
                "-T",
                "raw",
                "-O",
                "float",
                "-E",
                "little",
                "-F",
                raw.toString(),
                soundFont.toString(),
                midi.toString());
    }

    private static float[] floats(byte[] littleEndian) {
        float[] samples = new float[littleEndian.length / Float.BYTES];
        ByteBuffer.wrap(littleEndian)
                .order(ByteOrder.LITTLE_ENDIAN)
                .asFloatBuffer()
                .get(samples);
        return samples;
    }
}
