package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * The default sound device. One thread, {@code cuelead-audio}, pulls a {@link Sound} and feeds the device; it
 * never waits for another. Orders come to it through a queue without locks; what is heard comes back as plain
 * volatile values.
 *
 * <p>Orders may come from one thread at a time; all other methods are thread-safe.
 */
public final class OpenAlOutput implements Speakers {
    private static final long PUMP_NANOS = TimeUnit.MILLISECONDS.toNanos(4);
    private static final long REOPEN_NANOS = TimeUnit.SECONDS.toNanos(1);
    private static final long POLL_MILLIS = 10;

    private final AlDevice device;
    private final SampleRate rate;
    private final ConcurrentLinkedQueue<Order> orders = new ConcurrentLinkedQueue<>();
    private final Thread audioThread = new Thread(this::run, "cuelead-audio");

    private volatile Track track = new Track((interleaved, frames) -> 0, 0);
    private volatile int dropOuts;
    private volatile boolean isDeviceLost;
    private volatile boolean isClosing;

    /** What the audio thread shall do. */
    @FunctionalInterface
    private interface Order {
        void on(AlStream stream);
    }

    @SuppressWarnings("ThreadPriorityCheck") // a hint: the queue is deep enough without
    private OpenAlOutput(AlDevice device, SampleRate rate) {
        this.device = device;
        this.rate = rate;
        audioThread.setDaemon(true);
        audioThread.setPriority(Thread.MAX_PRIORITY);
    }

    /**
     * Opens the default device, which plays silence until something is played.
     *
     * @throws Refused when there is none, naming the way without one
     */
    public static OpenAlOutput open(SampleRate rate) throws Refused {
        OpenAlOutput output = new OpenAlOutput(AlDevice.openDefault(rate), rate);
        output.audioThread.start();
        return output;
    }

    @Override
    public void play(Sound sound, long startFrame) {
        Track next = new Track(sound, startFrame);
        track = next;
        order(stream -> stream.begin(next));
    }

    @Override
    public void pause() {
        order(AlStream::pause);
    }

    @Override
    public void resume() {
        order(AlStream::resume);
    }

    @Override
    public void stop() {
        Track stopped = track;
        order(stream -> {
            stream.stop();
            stopped.end();
        });
    }

    private void order(Order order) {
        orders.add(order);
        LockSupport.unpark(audioThread);
    }

    @Override
    public long heardFrame() {
        return track.heardFrame();
    }

    @Override
    public boolean hasEnded() {
        return track.hasEnded();
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) throws InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(timeoutMillis);
        while (!hasEnded() && System.nanoTime() - deadline < 0) {
            Thread.sleep(POLL_MILLIS);
        }
        return hasEnded();
    }

    @Override
    public int dropOuts() {
        return dropOuts;
    }

    @Override
    public boolean isDeviceLost() {
        return isDeviceLost;
    }

    private void run() {
        device.useOnThisThread();
        try (AlStream stream = new AlStream(rate)) {
            while (!isClosing) {
                obey(stream);
                if (device.isConnected()) {
                    stream.pump();
                    dropOuts = stream.dropOuts();
                    LockSupport.parkNanos(PUMP_NANOS);
                } else {
                    waitForDevice(stream);
                }
            }
        } finally {
            device.leaveThisThread();
        }
    }

    private void obey(AlStream stream) {
        for (Order order = orders.poll(); order != null; order = orders.poll()) {
            order.on(stream);
        }
    }

    private void waitForDevice(AlStream stream) {
        isDeviceLost = true;
        LockSupport.parkNanos(REOPEN_NANOS);
        if (!isClosing && device.reopen()) {
            stream.restart();
            isDeviceLost = false;
        }
    }

    @Override
    public void close() {
        isClosing = true;
        LockSupport.unpark(audioThread);
        try {
            audioThread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return; // the thread ends on its own and the device with the program
        }
        device.close();
    }
}
