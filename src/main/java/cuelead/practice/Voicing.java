package cuelead.practice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.EspeakVoice;
import cuelead.voice.PronunciationFile;
import cuelead.voice.Pronunciations;
import cuelead.voice.RecordedWords;
import cuelead.voice.SynthVoice;
import cuelead.voice.Voice;
import cuelead.voice.VoiceCache;
import cuelead.voice.Voices;
import cuelead.voice.WordFileReader;
import java.nio.file.Path;
import java.util.List;

/** The voice that speaks: the user's own words where there are some, else a synthesizer. */
public final class Voicing {
    private Voicing() {}

    /** Reads recorded words from sound files. */
    public static WordFileReader wordFiles() {
        return new OwnWordFiles();
    }

    /**
     * Makes the voice; a synthesizer starts only when a word is not remembered.
     *
     * @param cache    folder in which spoken words may be kept
     * @param problems what is doubtful about the recordings and the pronunciations is added here
     * @throws Refused when the folder of recordings or the file of pronunciations is missing or cannot be read
     */
    public static Voice voice(SampleRate rate, VoiceWish wish, Path cache, List<Problem> problems) throws Refused {
        Voice spoken = spoken(rate, wish, cache.resolve("words"), problems);
        if (wish.ownWords().isEmpty()) {
            return spoken;
        }
        OwnWordFiles files = new OwnWordFiles();
        RecordedWords recorded = new RecordedWords(wish.ownWords().get(), files, rate);
        problems.addAll(recorded.problems());
        problems.addAll(files.problems());
        return new Voices(List.of(recorded, spoken));
    }

    private static Voice spoken(SampleRate rate, VoiceWish wish, Path kept, List<Problem> problems) throws Refused {
        Pronunciations pronunciations = Pronunciations.NONE;
        if (wish.pronunciations().isPresent()) {
            PronunciationFile.Read read =
                    PronunciationFile.read(wish.pronunciations().get());
            problems.addAll(read.problems());
            pronunciations = read.pronunciations();
        }
        if (wish.speaker() == VoiceWish.Speaker.ESPEAK_NG) {
            EspeakVoice espeak = new EspeakVoice(rate, pronunciations);
            return new VoiceCache(espeak, espeak.key(), kept);
        }
        SynthVoice synth = new SynthVoice(rate, pronunciations);
        return new VoiceCache(synth, synth.key(), kept);
    }
}
