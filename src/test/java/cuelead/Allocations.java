package cuelead;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/** Counts what code allocates on the thread that runs it. */
public final class Allocations {
    private static final int PASSES = 5;

    private Allocations() {}

    /**
     * The fewest bytes that one of a few passes allocated. What the code itself allocates, every pass allocates; what
     * only some do is the virtual machine's: compiled code may call a method (an intrinsic such as
     * Double.doubleToRawLongBits) for the first time and link it by its name, a new string.
     *
     * @param prepare is run before each pass, and not counted
     */
    public static long leastBytes(Runnable prepare, Runnable pass) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        threads.getThreadAllocatedBytes(thread);
        long least = Long.MAX_VALUE;
        for (int i = 0; i < PASSES && least > 0; i++) {
            prepare.run();
            long before = threads.getThreadAllocatedBytes(thread);
            pass.run();
            least = Math.min(least, threads.getThreadAllocatedBytes(thread) - before);
        }
        return least;
    }
}
