package cuelead.dsp.speech;

import java.util.List;

/**
 * How well each sound of speech fits each frame of {@link MelBands}: natural logarithms of likelihoods, up to a constant a
 * frame. The first sound is {@link #SILENCE}: whatever is no speech.
 */
public final class PhoneOdds {
    public static final int SILENCE = 0;
    /** Lower case without stress, as the built-in voice names them. */
    private static final List<String> NAMES =
            List.of(("sil aa ae ah ao aw ay b ch d dh eh er ey f g hh ih iy jh k l m n ng ow"
                            + " oy p r s sh t th uh uw v w y z zh")
                    .split(" "));

    private final float[][] byPhone;

    /** @param byPhone by sound, then frame; handed over */
    public PhoneOdds(float[][] byPhone) {
        this.byPhone = byPhone;
    }

    /** How many sounds are told apart, with silence. */
    public static int phones() {
        return NAMES.size();
    }

    /** The number of a sound, or -1 when it is unknown. */
    public static int phone(String name) {
        String plain =
                switch (name) {
                    case "ax" -> "ah";
                    case "axr" -> "er";
                    case "ix" -> "ih";
                    case "dx" -> "d";
                    case "pau" -> "sil";
                    default -> name;
                };
        return NAMES.indexOf(plain);
    }

    /** The name of a sound. */
    public static String name(int phone) {
        return NAMES.get(phone);
    }

    public int frames() {
        return byPhone[0].length;
    }

    public float at(int phone, int frame) {
        return byPhone[phone][frame];
    }
}
