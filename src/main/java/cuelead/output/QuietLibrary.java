package cuelead.output;

import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;

/**
 * Keeps OpenAL's own messages off the terminal while it runs: on Linux it writes a line to standard error whenever a
 * sound server is gone. Whoever sets {@code ALSOFT_LOGLEVEL} reads them nevertheless.
 */
final class QuietLibrary {
    private static final int KEEP_WHAT_IS_SET = 0;

    private QuietLibrary() {}

    /** Must come before the first device is looked for. */
    static void ask() {
        if (Platform.get() != Platform.LINUX) {
            return;
        }
        try (MemoryStack stack = MemoryStack.stackPush()) {
            long name = MemoryUtil.memAddress(stack.ASCII("ALSOFT_LOGLEVEL"));
            long silent = MemoryUtil.memAddress(stack.ASCII("0"));
            JNI.invokePPI(name, silent, KEEP_WHAT_IS_SET, Libc.SETENV);
        }
    }
}
