package cuelead.output;

import java.util.function.LongSupplier;
import org.lwjgl.system.JNI;
import org.lwjgl.system.Platform;
import org.lwjgl.system.linux.FCNTL;

/**
 * Keeps native libraries off the terminal while a sound device is looked for: on Linux the sound libraries write
 * pages to standard error when there is none. Redirects the file descriptor itself and puts it back;
 * elsewhere, or where that is not possible, it does nothing.
 */
final class QuietStandardError {
    private static final int STANDARD_ERROR = 2;
    private static final int NONE = -1;

    private QuietStandardError() {}

    /** The answer of a call during which standard error leads nowhere. */
    static long during(LongSupplier call) {
        int kept = Platform.get() == Platform.LINUX ? redirect() : NONE;
        try {
            return call.getAsLong();
        } finally {
            restore(kept);
        }
    }

    private static int redirect() {
        int nowhere = FCNTL.open(null, "/dev/null", FCNTL.O_WRONLY | FCNTL.O_CLOEXEC, 0);
        if (nowhere == NONE) {
            return NONE;
        }
        int kept = JNI.invokeI(STANDARD_ERROR, Libc.DUP);
        if (kept != NONE) {
            JNI.invokeI(nowhere, STANDARD_ERROR, Libc.DUP2);
        }
        JNI.invokeI(nowhere, Libc.CLOSE);
        return kept;
    }

    private static void restore(int kept) {
        if (kept != NONE) {
            JNI.invokeI(kept, STANDARD_ERROR, Libc.DUP2);
            JNI.invokeI(kept, Libc.CLOSE);
        }
    }
}
