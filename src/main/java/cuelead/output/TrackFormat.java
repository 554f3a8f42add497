package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.util.Locale;

/** What a practice track can be written as. */
public enum TrackFormat {
    /** 16 bits. */
    WAV(".wav") {
        @Override
        TrackWriter writer(SeekableByteChannel channel, SampleRate rate, TrackTags tags, Rounding rounding) {
            WavHeader header = new WavHeader(rounding.wavFormat(), Sound.CHANNELS, rate);
            return new SampleWriter(channel, header, WavInfo.chunk(tags));
        }
    },
    /** The same samples as in a WAV file, packed. */
    FLAC(".flac") {
        @Override
        TrackWriter writer(SeekableByteChannel channel, SampleRate rate, TrackTags tags, Rounding rounding) {
            return new FlacWriter(channel, rate, tags, rounding);
        }
    },
    /** At a steady bit rate: 192 kbit/s from 32,000 Hz on. */
    MP3(".mp3") {
        @Override
        TrackWriter writer(SeekableByteChannel channel, SampleRate rate, TrackTags tags, Rounding rounding) {
            return new Mp3Writer(channel, Mp3Layout.of(rate), tags);
        }

        @Override
        public void checkRate(SampleRate rate) throws Refused {
            if (!Mp3Layout.isKnown(rate)) {
                throw new Refused("An MP3 file cannot hold " + rate.hz()
                        + " samples a second; write a .wav or .flac file, or choose another rate (--rate 44100).");
            }
        }
    };

    private final String ending;

    TrackFormat(String ending) {
        this.ending = ending;
    }

    /** How the names of its files end, with the dot. */
    public String ending() {
        return ending;
    }

    /**
     * The format that a file's ending names, in capitals or not.
     *
     * @throws Refused when it is none of the three
     */
    public static TrackFormat of(Path file) throws Refused {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        for (TrackFormat format : values()) {
            if (name.endsWith(format.ending)) {
                return format;
            }
        }
        throw new Refused("Cannot write " + file + ": the name of a track must end in .wav, .flac or .mp3.");
    }

    /**
     * Checks that the format knows a sample rate.
     *
     * @throws Refused when it does not: what to try
     */
    public void checkRate(SampleRate rate) throws Refused {}

    /**
     * Begins to write at the beginning of an empty file.
     *
     * @param rounding of the samples, where there are any
     */
    abstract TrackWriter writer(SeekableByteChannel channel, SampleRate rate, TrackTags tags, Rounding rounding);
}
