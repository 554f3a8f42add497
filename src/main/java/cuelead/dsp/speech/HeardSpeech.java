package cuelead.dsp.speech;

/** What the {@link SpeechNetwork} hears in a sound, before it is said which sounds of speech that may be. Immutable. */
public final class HeardSpeech {
    private final float[][] channels;
    private final SoundLayer layer;
    private final float[] logPriors;

    HeardSpeech(float[][] channels, SoundLayer layer, float[] logPriors) {
        this.channels = channels;
        this.layer = layer;
        this.logPriors = logPriors;
    }

    /** How well each sound fits each frame. */
    public PhoneOdds odds() {
        float[][] odds = layer.apply(channels);
        SoundLayer.normalize(odds);
        for (int phone = 0; phone < odds.length; phone++) {
            for (int frame = 0; frame < odds[phone].length; frame++) {
                odds[phone][frame] -= logPriors[phone];
            }
        }
        return new PhoneOdds(odds);
    }

    /**
     * The same heard by an ear that has got used to the speaker.
     *
     * @param sounds the sound of each frame; less than 0 where nothing is known
     */
    public HeardSpeech usedTo(int[] sounds) {
        int known = 0;
        for (int sound : sounds) {
            known += sound >= 0 ? 1 : 0;
        }
        if (known == 0) {
            return this;
        }
        int[] labels = new int[known];
        float[][] heard = new float[channels.length][known];
        int at = 0;
        for (int frame = 0; frame < sounds.length; frame++) {
            if (sounds[frame] >= 0) {
                labels[at] = sounds[frame];
                for (int channel = 0; channel < channels.length; channel++) {
                    heard[channel][at] = channels[channel][frame];
                }
                at++;
            }
        }
        return new HeardSpeech(channels, layer.fitted(heard, labels), logPriors);
    }
}
