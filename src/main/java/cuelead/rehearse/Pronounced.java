package cuelead.rehearse;

import cuelead.dsp.speech.PhoneOdds;
import cuelead.report.Refused;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;

/**
 * A word or phrase as it is made of sounds.
 *
 * @param phones numbers of {@link PhoneOdds}
 */
record Pronounced(String word, List<Integer> phones) {
    Pronounced {
        phones = List.copyOf(phones);
    }

    /** As a voice says it; empty where the voice cannot, or does not know its sounds. */
    static Optional<Pronounced> by(Voice voice, String word) throws Refused {
        List<Integer> phones = voice.say(word).stream()
                .flatMap(clip -> clip.phones().stream())
                .map(Clip.Phone::name)
                .map(PhoneOdds::phone)
                .filter(phone -> phone > PhoneOdds.SILENCE)
                .toList();
        return phones.isEmpty() ? Optional.empty() : Optional.of(new Pronounced(word, phones));
    }
}
