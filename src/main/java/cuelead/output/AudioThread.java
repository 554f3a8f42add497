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

    /** A sound server that stands still answers nothing; then the device is given up, and the program ends. */
    private static final long MOST_ENDING_MILLIS = 400;

    private static final long REOPEN_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private final OpensDevice opens;
    private final SampleRate rate;
    private final CompletableFuture<Optional<Refused>> opened = new CompletableFuture<>();
    private final DefaultDevice defaultDevice = new DefaultDevice();
    private final Orders orders = new Orders();
    private final Thread thread = new Thread(this::run, "cuelead-audio");
    /** A program that is told to end must not do so in the midst of a call of the sound library. */
    private final Thread atExit = new Thread(this::stopThread, "cuelead-end-sound");

    private volatile int dropOuts;
    private volatile boolean isDeviceLost;
    private volatile boolean isEnding;
    private volatile Optional<Throwable> mistake = Optional.empty();

    @SuppressWarnings("ThreadPriorityCheck") // a hint: the queue is deep enough without
    private AudioThread(OpensDevice opens, SampleRate rate) {
        this.opens = opens;
        this.rate = rate;
        thread.setDaemon(true);
        thread.setPriority(Thread.MAX_PRIORITY);
    }

    /**
     * Opens a device on a new thread, which then feeds it.
     *
     * @throws Refused as opening does
     */
    static AudioThread start(OpensDevice opens, SampleRate rate) throws Refused {
        AudioThread audio = new AudioThread(opens, rate);
        audio.thread.start();
        Optional<Refused> refusal = audio.opened.join();
        if (refusal.isPresent()) {
            throw refusal.get();
        }
        audio.endAtExit();
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

    private void endAtExit() {
        try {
            Runtime.getRuntime().addShutdownHook(atExit);
        } catch (IllegalStateException e) {
            stopThread(); // the program is ending already
        }
    }

    /** Ends it, and gives the device back. */
    void end() {
        stopThread();
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }

    private void stopThread() {
        isEnding = true;
        LockSupport.unpark(thread);
        try {
            thread.join(MOST_ENDING_MILLIS);
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
                DevicePresence presence = new DevicePresence(device)) {
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
        } else if (device.name().isEmpty() && defaultDevice.hasChanged()) {
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
