package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.file.Path;

/**
 * Writes practice tracks: files with title and tempo, for any player, in the format that the file's ending names. As
 * with {@link WavFile} a file is whole or not there.
 */
public final class TrackFile {
    private static final int BLOCK_FRAMES = 8192;

    private final WholeWriting writing;

    public TrackFile() {
        this(OpensChannel.ON_DISK);
    }

    /** @param opens how a new file is opened */
    TrackFile(OpensChannel opens) {
        writing = new WholeWriting(opens);
    }

    /**
     * Pulls a sound that was mixed to its end into a file; parameters as below.
     *
     * @throws Refused              as below
     * @throws InterruptedException as below
     */
    public void write(Sound sound, SampleRate rate, TrackTags tags, Path target) throws Refused, InterruptedException {
        write(sound, rate, tags, Rounding.DITHERED, target);
    }

    /**
     * Pulls a sound to its end into a file.
     *
     * @param target ends in .wav, .flac or .mp3
     * @throws Refused              when it ends otherwise, the format does not know the sample rate, or the file cannot
     *                              be written: why, and what to try
     * @throws InterruptedException when the thread is interrupted; no file is left
     */
    public void write(Sound sound, SampleRate rate, TrackTags tags, Rounding rounding, Path target)
            throws Refused, InterruptedException {
        TrackFormat format = TrackFormat.of(target);
        format.checkRate(rate);
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        writing.write(target, channel -> {
            TrackWriter samples = format.writer(channel, rate, tags, rounding);
            samples.begin();
            for (int frames = sound.read(block, BLOCK_FRAMES); frames > 0; frames = sound.read(block, BLOCK_FRAMES)) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("interrupted while writing");
                }
                samples.write(block, 0, frames * Sound.CHANNELS);
            }
            samples.end();
        });
    }
}
