package cuelead.output;

import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.Platform;

/**
 * Runs the audio thread before all ordinary ones, where the system lets it (on Linux: the superuser, and the users
 * whom the system's limits allow it); on a busy computer it is ordinary threads that come too late. Threads that are
 * made on such a thread inherit it, so the sound library's own do when the device is opened there.
 */
final class RealTimePriority {
    private static final long THIS_THREAD = 0;
    private static final int SCHED_RR = 2;
    /** Above all ordinary threads, below the sound server's. */
    private static final int LOW = 1;

    private RealTimePriority() {}

    /** Asks for it; where it is refused all stays as it is. */
    static void askForThisThread() {
        if (Platform.get() != Platform.LINUX) {
            return;
        }
        try (MemoryStack stack = MemoryStack.stackPush()) {
            long parameters = stack.nint(LOW);
            JNI.invokePPI(THIS_THREAD, SCHED_RR, parameters, Libc.SCHED_SETSCHEDULER);
        }
    }
}
