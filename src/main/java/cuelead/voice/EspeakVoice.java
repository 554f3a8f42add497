package cuelead.voice;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.ProcessBuilder.Redirect;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/**
 * The voice of the program {@code espeak-ng}, where a user has installed it and wants it. It tells no times of its
 * sounds, so the perceptual centre is heard as in a recording. Thread-safe: every word is a run of the program.
 */
public final class EspeakVoice implements Voice {
    private static final int VERSION = 2;
    private static final String LANGUAGE = "en-us";
    private static final int WORDS_PER_MINUTE = 170;

    private final String program;
    private final SampleRate rate;
    private final Pronunciations pronunciations;
    private final RecordedClips clips;

    public EspeakVoice(SampleRate rate, Pronunciations pronunciations) {
        this("espeak-ng", rate, pronunciations);
    }

    /** @param program its name or path */
    EspeakVoice(String program, SampleRate rate, Pronunciations pronunciations) {
        this.program = program;
        this.rate = rate;
        this.pronunciations = pronunciations;
        this.clips = new RecordedClips(rate);
    }

    /** A file-name-safe name for everything but the words that a clip depends on. */
    public String key() {
        return "espeak-ng-" + LANGUAGE + "-" + WORDS_PER_MINUTE + "wpm-v" + VERSION + "-c" + Clarity.VERSION + "-"
                + rate.hz() + "hz" + pronunciations.key();
    }

    @Override
    public Optional<Clip> say(String words) throws Refused {
        Optional<String> text = SpeakableText.of(words);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        MonoSound clean = Rumble.removed(run(pronunciations.respelled(text.get())));
        return WordInTake.of(clean, text.get())
                .map(found -> clips.cut(words, clean, whole(clean, found), found.centreSeconds(clean)));
    }

    /** Nothing but the word is in it. */
    private static AudibleSpan whole(MonoSound clean, WordInTake found) {
        return AudibleSpan.of(clean).orElse(found.span());
    }

    private MonoSound run(String text) throws Refused {
        List<String> command =
                List.of(program, "-v", LANGUAGE, "-s", Integer.toString(WORDS_PER_MINUTE), "--stdout", "--", text);
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(Redirect.DISCARD)
                    .redirectInput(Redirect.PIPE)
                    .start();
            process.getOutputStream().close();
            try (InputStream out = process.getInputStream()) {
                return decoded(out.readAllBytes());
            } finally {
                process.destroy();
            }
        } catch (IOException missing) {
            throw new Refused(
                    "The voice espeak-ng was asked for, and that program is not installed or does not run: install it,"
                            + " or leave out --voice for the built-in voice.",
                    missing);
        } catch (UnsupportedAudioFileException other) {
            throw new Refused(
                    "The program espeak-ng gave no sound for \"" + text + "\": leave out --voice for the built-in"
                            + " voice.",
                    other);
        }
    }

    /** Written to a pipe, so its length is not in its header. */
    private static MonoSound decoded(byte[] wav) throws IOException, UnsupportedAudioFileException {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(wav))) {
            AudioFormat format = in.getFormat();
            if (format.getChannels() != 1 || format.getSampleSizeInBits() != 16 || format.isBigEndian()) {
                throw new UnsupportedAudioFileException("not 16-bit mono: " + format);
            }
            byte[] bytes = in.readAllBytes();
            float[] samples = new float[bytes.length / 2];
            for (int i = 0; i < samples.length; i++) {
                samples[i] = (bytes[2 * i + 1] << 8 | (bytes[2 * i] & 0xff)) / 32768f;
            }
            return new MonoSound(samples, new SampleRate(Math.round(format.getSampleRate())));
        }
    }
}
