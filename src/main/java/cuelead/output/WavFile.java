package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Writes WAV files (RIFF, "Multimedia programming interface and data specifications 1.0", 1991). The file is
 * written under a temporary name in the same folder and takes its place only when it is whole; on any failure,
 * and when the program is interrupted, the temporary one is deleted and an older file of that name stays as it
 * was.
 */
public final class WavFile {
    private static final int BLOCK_FRAMES = 8192;

    private final WholeWriting writing;

    public WavFile() {
        this(OpensChannel.ON_DISK);
    }

    /** @param opens how a new file is opened */
    WavFile(OpensChannel opens) {
        writing = new WholeWriting(opens);
    }

    /**
     * Pulls a sound to its end into a file.
     *
     * @throws Refused              when the file cannot be written: why, and what to try
     * @throws InterruptedException when the thread is interrupted; no file is left
     */
    public void write(Sound sound, SampleRate rate, WavFormat format, Path target)
            throws Refused, InterruptedException {
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        writeWhole(target, new WavHeader(format, Sound.CHANNELS, rate), samples -> {
            for (int frames = sound.read(block, BLOCK_FRAMES); frames > 0; frames = sound.read(block, BLOCK_FRAMES)) {
                samples.write(block, 0, frames * Sound.CHANNELS);
            }
        });
    }

    /** Writes a mono clip into a file; otherwise as {@link #write}. */
    public void writeMono(float[] mono, SampleRate rate, WavFormat format, Path target)
            throws Refused, InterruptedException {
        writeWhole(target, new WavHeader(format, 1, rate), samples -> {
            for (int done = 0; done < mono.length; done += BLOCK_FRAMES) {
                samples.write(mono, done, Math.min(BLOCK_FRAMES, mono.length - done));
            }
        });
    }

    @FunctionalInterface
    private interface Content {
        void into(SampleWriter samples) throws IOException, InterruptedException;
    }

    private void writeWhole(Path target, WavHeader header, Content content) throws Refused, InterruptedException {
        writing.write(target, channel -> {
            SampleWriter samples = new SampleWriter(channel, header);
            samples.begin();
            content.into(samples);
            samples.end();
        });
    }
}
