package cuelead.output;

import cuelead.time.SampleRate;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** The thread that feeds one device, and what it lets others know. Its methods may be called by any thread. */
final class AudioThread {
    /** A fifth of a buffer: no buffer waits long to be filled. */
    private static final long PUMP_NANOS = TimeUnit.MILLISECONDS.toNanos(5);

    private static final long REOPEN_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

    private final AlDevice device;
    private final SampleRate rate;
    private final DefaultDevice defaultDevice = new DefaultDevice();
    private final Orders orders = new Orders();
    private final Thread thread = new Thread(this::run, "cuelead-audio");

    private volatile int dropOuts;
    private volatile boolean isDeviceLost;
    private volatile boolean isEnding;
    private volatile Optional<Throwable> mistake = Optional.empty();

    @SuppressWarnings("ThreadPriorityCheck") // a hint: the queue is deep enough without
    AudioThread(AlDevice device, SampleRate rate) {
        this.device = device;
        this.rate = rate;
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
    }

    void start() {
        thread.start();
    }

    void give(Order order) {
        orders.give(order);
        LockSupport.unpark(thread);
    }

    int dropOuts() {
        return dropOuts;
    }

    boolean isDeviceLost() {
        return isDeviceLost;
    }

    /** @throws IllegalStateException when a mistake of the program, such as a sound that throws, ended the thread */
    void checkAlive() {
        if (mistake.isPresent()) {
            throw new IllegalStateException("the audio thread has ended", mistake.get());
        }
    }

    /** Ends it and waits until it has ended; false when the wait was interrupted. */
    boolean end() {
        isEnding = true;
        LockSupport.unpark(thread);
        try {
            thread.join();
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false; // the thread ends on its own and the device with the program
        }
    }

    private void run() {
        device.useOnThisThread();
        try (AlStream stream = new AlStream(device, rate, QueueDepth.SHIPPED, System::nanoTime)) {
            while (!isEnding) {
                turn(stream);
            }
        } catch (RuntimeException | Error bug) {
            mistake = Optional.of(bug); // told to whoever looks next
        } finally {
            device.leaveThisThread();
        }
    }

    private void turn(AlStream stream) {
        orders.obey(stream);
        if (!stream.pump()) {
            waitForDevice(stream);
        } else if (device.followsDefault() && defaultDevice.hasChanged()) {
            move(stream);
        } else {
            dropOuts = stream.dropOuts();
            LockSupport.parkNanos(PUMP_NANOS);
        }
    }

    private void waitForDevice(AlStream stream) {
        isDeviceLost = true;
        LockSupport.parkNanos(REOPEN_NANOS);
        if (!isEnding && device.reopen()) {
            stream.goOnAfterLoss();
            isDeviceLost = false;
        }
    }

    /** What the old device still has is heard there first. */
    private void move(AlStream stream) {
        stream.hold();
        long until = System.nanoTime() + (long) (stream.latencySeconds() * TimeUnit.SECONDS.toNanos(1));
        while (System.nanoTime() - until < 0) {
            LockSupport.parkNanos(until - System.nanoTime());
        }
        device.reopen();
        stream.goOnAfterHold();
    }
}
