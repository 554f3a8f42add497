package cuelead.practice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.EspeakVoice;
import cuelead.voice.PronunciationFile;
import cuelead.voice.Pronunciations;
import cuelead.voice.RecordedWords;
import cuelead.voice.SynthSource;
import cuelead.voice.SynthVoice;
import cuelead.voice.Voice;
import cuelead.voice.VoiceCache;
import cuelead.voice.Voices;
import cuelead.voice.WordFileReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The voice that speaks: the user's own words where there are some, else a synthesizer, which is loaded only when a word
 * is not remembered, or when it is {@link #expect}ed that one will not be.
 */
public final class Voicing {
    private final VoiceWish wish;
    private final Path kept;
    private final List<Problem> problems = new ArrayList<>();
    private final SynthSource synthesizer;
    private Optional<VoiceCache> cache = Optional.empty();

    private Voicing(VoiceWish wish, Path cache) throws Refused {
        this.wish = wish;
        kept = cache.resolve("words");
        synthesizer = new SynthSource(read());
    }

    /** Reads recorded words from sound files. */
    public static WordFileReader wordFiles() {
        return new OwnWordFiles();
    }

    /**
     * A voice whose sample rate is not known yet.
     *
     * @param cache folder in which spoken words may be kept
     * @throws Refused when the file of pronunciations cannot be read
     */
    public static Voicing of(VoiceWish wish, Path cache) throws Refused {
        return new Voicing(wish, cache);
    }

    /** Begins to load the synthesizer where a sheet has never been spoken, so that its first word need not wait as long. */
    void expect(Path sheet) {
        if (wish.speaker() == VoiceWish.Speaker.BUILT_IN && !spokenSheets().has(sheet)) {
            synthesizer.getReady();
        }
    }

    /** All words of a sheet have been spoken. */
    void noteSpoken(Path sheet) {
        spokenSheets().note(sheet);
    }

    private SpokenSheets spokenSheets() {
        return new SpokenSheets(kept.resolve("sheets-" + synthesizer.key()));
    }

    /**
     * The voice at a rate.
     *
     * @param told what is doubtful about the recordings and the pronunciations is added here
     * @throws Refused when the folder of recordings is missing or cannot be read
     */
    public Voice at(SampleRate rate, List<Problem> told) throws Refused {
        told.addAll(problems);
        Voice spoken = spoken(rate);
        if (wish.ownWords().isEmpty()) {
            return spoken;
        }
        OwnWordFiles files = new OwnWordFiles();
        RecordedWords recorded = new RecordedWords(wish.ownWords().get(), files, rate);
        told.addAll(recorded.problems());
        told.addAll(files.problems());
        return new Voices(List.of(recorded, spoken));
    }

    /** How the user wants words to be said. */
    public Pronunciations pronunciations() {
        return synthesizer.pronunciations();
    }

    private Pronunciations read() throws Refused {
        if (wish.pronunciations().isEmpty()) {
            return Pronunciations.NONE;
        }
        PronunciationFile.Read read =
                PronunciationFile.read(wish.pronunciations().get());
        problems.addAll(read.problems());
        return read.pronunciations();
    }

    private Voice spoken(SampleRate rate) {
        if (wish.speaker() == VoiceWish.Speaker.ESPEAK_NG) {
            EspeakVoice espeak = new EspeakVoice(rate, pronunciations());
            return remembering(espeak, espeak.key());
        }
        SynthVoice synth = new SynthVoice(rate, synthesizer);
        return remembering(synth, synth.key());
    }

    private Voice remembering(Voice voice, String key) {
        VoiceCache remembering = new VoiceCache(voice, key, kept);
        cache = Optional.of(remembering);
        return remembering;
    }

    /** From now on its voice keeps nothing; waits until a file that is being written is finished. */
    void writeNoMore() {
        cache.ifPresent(VoiceCache::writeNoMore);
    }
}
