package cuelead.rehearse;

import cuelead.dsp.speech.HeardSpeech;
import cuelead.dsp.speech.PhoneOdds;
import cuelead.dsp.speech.SpeechNetwork;
import cuelead.report.Refused;
import cuelead.voice.MonoSound;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;

/** Listens to a take and compares it with the plan. */
public final class Reviewer {
    /** How often it gets used to the speaker before it decides. */
    private static final int ROUNDS = 2;

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
        Search search = new Search(CallWords.with(plan, voice), plan, roundTripSeconds, new Loudness(take));
        HeardSpeech speech = SpeechNetwork.load().hear(take.samples());
        for (int round = 0; round < ROUNDS; round++) {
            PhoneOdds odds = speech.odds();
            speech = speech.usedTo(search.sounds(odds, search.calls(odds)));
        }
        return new Review(search.calls(speech.odds()));
    }

    /** Finds calls with what is heard at a time. */
    private record Search(List<Pronounced> words, List<PlannedCall> plan, double roundTripSeconds, Loudness loudness) {
        List<ReviewedCall> calls(PhoneOdds odds) {
            WordOdds entry = new WordOdds(words, plan, roundTripSeconds, odds.frames());
            Centres centres = new Centres(odds, words);
            List<HeardWord> heard = new WordSearch(words, odds, entry)
                    .find().stream()
                            .filter(loudness::standsOut)
                            .map(centres::centred)
                            .toList();
            return new Matching(plan, heard, roundTripSeconds).calls();
        }

        /** The sound of each frame, as far as the plan speaks for it: in planned words, and in the pauses between words. */
        int[] sounds(PhoneOdds odds, List<ReviewedCall> calls) {
            int[] sounds = new int[odds.frames()];
            Centres centres = new Centres(odds, words);
            for (ReviewedCall call : calls) {
                boolean isPlanned =
                        call.kind() == CallKind.OK || call.kind() == CallKind.EARLY || call.kind() == CallKind.LATE;
                call.heard().ifPresent(word -> centres.label(word, sounds, isPlanned));
            }
            return sounds;
        }
    }
}
