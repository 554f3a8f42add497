package cuelead.voice;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The built-in voice. The synthesizer is set up by the first word that is really asked for, so that a start whose
 * words are all remembered elsewhere never pays for it. Thread-safe: one synthesis at a time.
 */
public final class SynthVoice implements Voice {
    /** Raised whenever the same words would sound or be marked differently than before. */
    private static final int VERSION = 4;

    /** Of the voice as it is now. */
    static final String NAME = "kevin16-" + Synthesizer.WORDS_PER_MINUTE + "wpm-v" + VERSION + "-c" + Clarity.VERSION;

    private final SampleRate rate;
    private final SynthSource source;
    private final Pronunciations pronunciations;
    private final ClipEditor editor;
    private final Object oneAtATime = new Object();

    /** @param rate the sample rate of its clips */
    public SynthVoice(SampleRate rate, Pronunciations pronunciations) {
        this(rate, new SynthSource(pronunciations));
    }

    /**
     * With a synthesizer that may be loaded already, and is used by nobody else.
     *
     * @param rate the sample rate of its clips
     */
    public SynthVoice(SampleRate rate, SynthSource source) {
        this.rate = rate;
        this.source = source;
        this.pronunciations = source.pronunciations();
        this.editor = new ClipEditor(rate, Clarity.USUAL);
    }

    /** A file-name-safe name for everything but the words that a clip depends on. */
    public String key() {
        return NAME + "-" + rate.hz() + "hz" + pronunciations.key();
    }

    @Override
    public Optional<Clip> say(String words) throws Refused {
        Optional<String> text = SpeakableText.of(words);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Synthesizer.Speech speech;
        synchronized (oneAtATime) {
            speech = source.get().speak(pronunciations.respelled(text.get()));
        }
        MonoSound spoken = Pauses.silenced(Rumble.removed(speech.sound()), speech.phones());
        return AudibleSpan.of(spoken).map(span -> clip(words, editor.edit(spoken, span), speech.phones()));
    }

    private Clip clip(String words, ClipEditor.Edited edited, List<SpokenPhone> spoken) {
        double onset = rate.secondsAt(edited.audible().startFrame());
        double end = rate.secondsAt(edited.audible().endFrame());
        List<SpokenPhone> phones = new ArrayList<>(spoken);
        phones.replaceAll(phone -> phone.earlierBy(edited.sourceStartSeconds()));
        double centre = StressedSyllable.of(phones, onset, end)
                .map(StressedSyllable::centreSeconds)
                .orElse(onset);
        List<Clip.Phone> table = onClip(phones, edited.sound().lengthSeconds());
        return new Clip(words, rate, edited.sound().samples(), onset, centre, end, table);
    }

    /** The phones without what was cut off at either end. */
    private static List<Clip.Phone> onClip(List<SpokenPhone> phones, double lengthSeconds) {
        List<Clip.Phone> table = new ArrayList<>();
        for (SpokenPhone phone : phones) {
            double start = Math.max(0, phone.startSeconds());
            double end = Math.min(lengthSeconds, phone.endSeconds());
            if (start < end) {
                table.add(new Clip.Phone(phone.name(), start, end));
            }
        }
        return table;
    }
}
