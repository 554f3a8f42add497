package cuelead.output;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** The thread that feeds one device, and what it lets others know. Its methods may be called by any thread. */
final class AudioThread {
    /** A fifth of a buffer: no buffer waits long to be filled. */
    private static final long PUMP_NANOS = TimeUnit.MILLISECONDS.toNanos(5);

    private static final long REOPEN_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private final OpensDevice opens;
    private final Optional<DeviceName> name;
    private final SampleRate rate;
    private final CompletableFuture<Optional<Refused>> opened = new CompletableFuture<>();
    private final DefaultDevice defaultDevice = new DefaultDevice();
    private final Orders orders = new Orders();
    private final Thread thread = new Thread(this::run, "cuelead-audio");

    private volatile int dropOuts;
    private volatile boolean isDeviceLost;
    private volatile boolean isEnding;
    private volatile Optional<Throwable> mistake = Optional.empty();

    @SuppressWarnings("ThreadPriorityCheck") // a hint: the queue is deep enough without
    private AudioThread(OpensDevice opens, Optional<DeviceName> name, SampleRate rate) {
        this.opens = opens;
        this.name = name;
        this.rate = rate;
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
    }

    /**
     * Opens a device on a new thread, which then feeds it.
     *
     * @param name of the device; empty = whichever is the default
     * @throws Refused as opening does
     */
    static AudioThread start(OpensDevice opens, Optional<DeviceName> name, SampleRate rate) throws Refused {
        AudioThread audio = new AudioThread(opens, name, rate);
        audio.thread.start();
        Optional<Refused> refusal = audio.opened.join();
        if (refusal.isPresent()) {
            throw refusal.get();
        }
        return audio;
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

    /** Ends it, and gives the device back. */
    void end() {
        isEnding = true;
        LockSupport.unpark(thread);
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the thread ends on its own
        }
    }

    private void run() {
        RealTimePriority.askForThisThread();
        try (AlDevice device = opens.at(rate)) {
            opened.complete(Optional.empty());
            feed(device);
        } catch (Refused none) {
            opened.complete(Optional.of(none));
        } catch (RuntimeException | Error bug) {
            mistake = Optional.of(bug); // told to whoever looks next
            opened.completeExceptionally(bug);
        }
    }

    private void feed(AlDevice device) {
        device.useOnThisThread();
        try (AlStream stream = new AlStream(device, rate, QueueDepth.SHIPPED, System::nanoTime);
                DevicePresence presence = new DevicePresence(name)) {
            while (!isEnding) {
                turn(device, stream, presence);
            }
        } finally {
            device.leaveThisThread();
        }
    }

    private void turn(AlDevice device, AlStream stream, DevicePresence presence) {
        orders.obey(stream);
        if (presence.isGone()) {
            stream.hold(); // nothing of it shall be heard elsewhere
            waitFor(device, stream, presence);
        } else if (!stream.pump()) {
            waitFor(device, stream, presence);
        } else if (device.followsDefault() && defaultDevice.hasChanged()) {
            move(device, stream);
        } else {
            dropOuts = stream.dropOuts();
            LockSupport.parkNanos(PUMP_NANOS);
        }
    }

    private void waitFor(AlDevice device, AlStream stream, DevicePresence presence) {
        isDeviceLost = true;
        LockSupport.parkNanos(REOPEN_NANOS);
        if (!isEnding && !presence.isGone() && device.reopen()) {
            stream.goOnAfterLoss();
            isDeviceLost = false;
        }
    }

    /** What the old device still has is heard there first. */
    private void move(AlDevice device, AlStream stream) {
        stream.hold();
        long until = System.nanoTime() + (long) (stream.latencySeconds() * TimeUnit.SECONDS.toNanos(1));
        while (System.nanoTime() - until < 0) {
            LockSupport.parkNanos(until - System.nanoTime());
        }
        device.reopen();
        stream.goOnAfterHold();
    }
}
