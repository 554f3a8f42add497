package cuelead.song;

import java.nio.ByteBuffer;

/** How uncompressed files store one sample; the byte order is the buffer's. Full scale becomes 1. */
enum SampleFormat {
    UNSIGNED_8(1) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return ((bytes.get(at) & 0xff) - 128) / 128f;
        }
    },
    SIGNED_8(1) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return bytes.get(at) / 128f;
        }
    },
    SIGNED_16(2) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return bytes.getShort(at) / 0x1p15f;
        }
    },
    SIGNED_24(3) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            boolean bigEnd = bytes.order() == java.nio.ByteOrder.BIG_ENDIAN;
            int high = bytes.get(bigEnd ? at : at + 2);
            int low = bytes.get(bigEnd ? at + 2 : at) & 0xff;
            return (high << 16 | (bytes.get(at + 1) & 0xff) << 8 | low) / 0x1p23f;
        }
    },
    SIGNED_32(4) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return bytes.getInt(at) / 0x1p31f;
        }
    },
    FLOAT_32(4) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return finite(bytes.getFloat(at));
        }
    },
    FLOAT_64(8) {
        @Override
        float sample(ByteBuffer bytes, int at) {
            return finite((float) bytes.getDouble(at));
        }
    };

    private final int byteCount;

    SampleFormat(int byteCount) {
        this.byteCount = byteCount;
    }

    int byteCount() {
        return byteCount;
    }

    abstract float sample(ByteBuffer bytes, int at);

    /** One damaged sample must not poison every filter after it. */
    private static float finite(float sample) {
        return Float.isFinite(sample) ? sample : 0;
    }
}
