package cuelead.rehearse;

import cuelead.dsp.speech.PhoneOdds;
import cuelead.dsp.speech.SpeechNetwork;
import cuelead.report.Refused;
import cuelead.voice.MonoSound;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;

/** Listens to a take and compares it with the plan. */
public final class Reviewer {
    private final Voice voice;

    /** @param voice knows how words are made of sounds */
    public Reviewer(Voice voice) {
        this.voice = voice;
    }

    /**
     * How the calls of a take landed.
     *
     * @param recorded         one channel at {@link cuelead.dsp.speech.MelBands#RATE}
     * @param music            what was heard while calling, at the same rate, where it is known
     * @param plan             in order of time
     * @param roundTripSeconds how much later the take is than the song
     */
    public Review review(MonoSound recorded, Optional<MonoSound> music, List<PlannedCall> plan, double roundTripSeconds)
            throws Refused {
        MonoSound take = music.map(played -> Bleed.removed(recorded, played, roundTripSeconds))
                .orElse(recorded);
        List<Pronounced> words = CallWords.with(plan, voice);
        PhoneOdds odds = SpeechNetwork.load().hear(take.samples());
        WordOdds entry = new WordOdds(words, plan, roundTripSeconds, odds.frames());
        Loudness loudness = new Loudness(take);
        Centres centres = new Centres(odds, words);
        List<HeardWord> heard = new WordSearch(words, odds, entry)
                .find().stream()
                        .filter(loudness::standsOut)
                        .map(centres::centred)
                        .toList();
        return new Review(new Matching(plan, heard, roundTripSeconds).calls());
    }
}
