package cuelead.output;

/** How samples become 16-bit whole numbers. */
public enum Rounding {
    /** With dither: for sound that was mixed or changed. */
    DITHERED(WavFormat.PCM_16) {
        @Override
        short round(float sample, TpdfDither dither) {
            return dither.quantize(sample);
        }
    },
    /** To the nearest: for a copy of sound that is made of such numbers already. */
    NEAREST(WavFormat.PCM_16_ROUNDED) {
        @Override
        short round(float sample, TpdfDither dither) {
            return TpdfDither.round(sample, 0);
        }
    };

    private final WavFormat wavFormat;

    Rounding(WavFormat wavFormat) {
        this.wavFormat = wavFormat;
    }

    WavFormat wavFormat() {
        return wavFormat;
    }

    abstract short round(float sample, TpdfDither dither);
}
