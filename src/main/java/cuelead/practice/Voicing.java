package cuelead.practice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.RecordedWords;
import cuelead.voice.SynthVoice;
import cuelead.voice.Voice;
import cuelead.voice.VoiceCache;
import cuelead.voice.Voices;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The voice that speaks: the user's own words where there are some, else the synthesizer. */
public final class Voicing {
    private Voicing() {}

    /**
     * Makes the voice; the synthesizer starts only when a word is not remembered.
     *
     * @param ownWords a folder of recorded call-words
     * @param cache    folder in which spoken words may be kept
     * @param problems what is doubtful about the recordings is added here
     * @throws Refused when the folder of recordings is missing or cannot be read
     */
    public static Voice voice(SampleRate rate, Optional<Path> ownWords, Path cache, List<Problem> problems)
            throws Refused {
        SynthVoice synth = new SynthVoice(rate);
        Voice spoken = new VoiceCache(synth, synth.key(), cache.resolve("words"));
        if (ownWords.isEmpty()) {
            return spoken;
        }
        OwnWordFiles files = new OwnWordFiles();
        RecordedWords recorded = new RecordedWords(ownWords.get(), files, rate);
        problems.addAll(recorded.problems());
        problems.addAll(files.problems());
        return new Voices(List.of(recorded, spoken));
    }
}
