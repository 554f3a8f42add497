package cuelead.voice;

import cuelead.time.SampleRate;
import java.util.List;

/** Makes clips of recordings: cuts them out, levels them, joins them. Thread-safe. */
final class RecordedClips {
    /** From the end of one word to the onset of the next, as close as words are in a phrase that is called. */
    private static final double GAP_SECONDS = 0.030;

    private final SampleRate rate;
    private final ClipEditor editor;

    RecordedClips(SampleRate rate) {
        this.rate = rate;
        this.editor = new ClipEditor(rate, Clarity.USUAL);
    }

    /**
     * Cuts a word out.
     *
     * @param span          where it is heard in the recording
     * @param centreSeconds its perceptual centre there
     */
    Clip cut(String text, MonoSound sound, AudibleSpan span, double centreSeconds) {
        ClipEditor.Edited edited = editor.edit(sound, span);
        double onset = rate.secondsAt(edited.audible().startFrame());
        double end = rate.secondsAt(edited.audible().endFrame());
        double centre = centreSeconds - edited.sourceStartSeconds();
        return new Clip(text, rate, edited.sound().samples(), onset, centre, end, List.of());
    }

    /** The parts one after the other; centred on the first, as a phrase is. */
    Clip joined(String words, List<Clip> parts) {
        Clip first = parts.get(0);
        double end = first.endSeconds();
        float[] samples = first.samples();
        for (Clip part : parts.subList(1, parts.size())) {
            int start = rate.framesIn(end + GAP_SECONDS - part.onsetSeconds());
            samples = added(samples, part.samples(), start);
            end = rate.secondsAt(start) + part.endSeconds();
        }
        return new Clip(words, rate, samples, first.onsetSeconds(), first.centreSeconds(), end, List.of());
    }

    private static float[] added(float[] before, float[] part, int start) {
        float[] both = new float[Math.max(before.length, start + part.length)];
        System.arraycopy(before, 0, both, 0, before.length);
        for (int i = 0; i < part.length; i++) {
            both[start + i] += part[i];
        }
        return both;
    }
}
