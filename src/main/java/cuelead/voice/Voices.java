package cuelead.voice;

import cuelead.report.Refused;
import java.util.List;
import java.util.Optional;

/** Several voices in order of preference; each word is spoken by the first that can say it. Thread-safe if they are. */
public final class Voices implements Voice {
    private final List<Voice> inOrder;

    public Voices(List<Voice> inOrder) {
        this.inOrder = List.copyOf(inOrder);
    }

    @Override
    public Optional<Clip> say(String words) throws Refused {
        for (Voice voice : inOrder) {
            Optional<Clip> clip = voice.say(words);
            if (clip.isPresent()) {
                return clip;
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean isAtHand(String words) throws Refused {
        for (Voice voice : inOrder) {
            if (!voice.isAtHand(words)) {
                return false;
            }
            if (voice.say(words).isPresent()) {
                return true;
            }
        }
        return true;
    }
}
