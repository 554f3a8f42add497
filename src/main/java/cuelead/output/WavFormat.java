package cuelead.output;

import java.nio.ByteBuffer;

/** How samples are stored in a WAV file. */
public enum WavFormat {
    /** 16-bit whole numbers, dithered: for listening. */
    PCM_16(1, 2) {
        @Override
        void put(float sample, TpdfDither dither, ByteBuffer into) {
            into.putShort(Rounding.DITHERED.round(sample, dither));
        }
    },
    /** 16-bit whole numbers, rounded: for a copy of sound that is made of such numbers already. */
    PCM_16_ROUNDED(1, 2) {
        @Override
        void put(float sample, TpdfDither dither, ByteBuffer into) {
            into.putShort(Rounding.NEAREST.round(sample, dither));
        }
    },
    /** 32-bit floats, unchanged: for measuring and for further work. */
    FLOAT_32(3, 4) {
        @Override
        void put(float sample, TpdfDither dither, ByteBuffer into) {
            into.putFloat(sample);
        }
    };

    private final int tag;
    private final int sampleBytes;

    WavFormat(int tag, int sampleBytes) {
        this.tag = tag;
        this.sampleBytes = sampleBytes;
    }

    /** The format tag of the {@code fmt } chunk. */
    int tag() {
        return tag;
    }

    int sampleBytes() {
        return sampleBytes;
    }

    abstract void put(float sample, TpdfDither dither, ByteBuffer into);
}
