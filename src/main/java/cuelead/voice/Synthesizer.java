package cuelead.voice;

import com.sun.speech.freetts.Item;
import com.sun.speech.freetts.Relation;
import com.sun.speech.freetts.Utterance;
import com.sun.speech.freetts.UtteranceProcessor;
import com.sun.speech.freetts.en.us.cmu_us_kal.KevinVoiceDirectory;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * FreeTTS in this process, with its 16 kHz diphone voice. Setting up takes 0.3 to 1.5 s, a word then a few
 * milliseconds; equal text gives equal sound. Not thread-safe: two texts at once would mix.
 */
final class Synthesizer {
    private static final SampleRate RATE = new SampleRate(16_000);
    /** The fastest that is still understood as well as slower speech. */
    static final int WORDS_PER_MINUTE = 180;

    private static final int SIXTEEN_KHZ_VOICE = 1;
    /** Held here, as the logging system would forget a level that nobody holds. */
    private static final Logger LOGGER = Logger.getLogger("com.sun.speech.freetts");

    private final com.sun.speech.freetts.Voice voice;
    private final PcmCatcher catcher = new PcmCatcher();
    private final List<SpokenPhone> phones = new ArrayList<>();

    /** @param phones what is said when, on the time line of the sound */
    record Speech(MonoSound sound, List<SpokenPhone> phones) {}

    Synthesizer(Pronunciations pronunciations) throws Refused {
        LOGGER.setLevel(Level.OFF);
        voice = new KevinVoiceDirectory().getVoices()[SIXTEEN_KHZ_VOICE];
        voice.setLexicon(new DanceLexicon(voice.getLexicon(), pronunciations));
        voice.allocate();
        if (!voice.isLoaded()) {
            throw new Refused("The built-in voice cannot be loaded: the program file may be damaged; install it again,"
                    + " or give a folder of recorded words.");
        }
        voice.setRate(WORDS_PER_MINUTE);
        voice.setAudioPlayer(catcher);
        append(this::read);
    }

    /** @param text lower-case words with single spaces */
    Speech speak(String text) {
        catcher.clear();
        phones.clear();
        voice.speak(text);
        return new Speech(new MonoSound(catcher.samples(), RATE), List.copyOf(phones));
    }

    @SuppressWarnings("unchecked") // the library's list is older than generics
    private void append(UtteranceProcessor processor) {
        voice.getUtteranceProcessors().add(processor);
    }

    /** Reads what is said when; runs before the sound of the utterance comes. */
    private void read(Utterance utterance) {
        double utteranceSeconds = RATE.secondsAt(catcher.frames());
        double start = utteranceSeconds;
        Item lastWord = null;
        int word = phones.isEmpty() ? -1 : phones.get(phones.size() - 1).word();
        Relation segments = utterance.getRelation(Relation.SEGMENT);
        for (Item segment = segments == null ? null : segments.getHead();
                segment != null;
                segment = segment.getNext()) {
            double end = utteranceSeconds + segment.getFeatures().getFloat("end");
            String name = segment.getFeatures().getString("name");
            Item placed = segment.getItemAs(Relation.SYLLABLE_STRUCTURE);
            Item syllable = placed == null ? null : placed.getParent();
            boolean stressed = syllable != null
                    && syllable.getFeatures().isPresent("stress")
                    && syllable.getFeatures().getString("stress").equals("1");
            Item owner = syllable == null ? null : syllable.getParent();
            if (owner != null && (lastWord == null || !owner.equalsShared(lastWord))) {
                word++;
                lastWord = owner;
            }
            phones.add(new SpokenPhone(name, start, end, stressed, owner == null ? -1 : word));
            start = end;
        }
    }
}
