package cuelead.window.frame;

import cuelead.output.TextFile;
import cuelead.report.Refused;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * Remembers the session in a file, written after each change, so that a crash loses nothing. A file that cannot be read or
 * written is no reason to stop anybody. Used on the thread of events, but for its beginning and its end.
 */
public final class Memory {
    private static final int CLOSING_SECONDS = 2;

    private final Path file;
    private final ExecutorService writer = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "cuelead-memory");
        thread.setDaemon(true);
        return thread;
    });
    private Session session;

    /**
     * Reads it.
     *
     * @param folder may not exist yet
     */
    public Memory(Path folder) {
        file = folder.resolve("session.txt");
        session = read();
    }

    private Session read() {
        try {
            return Files.exists(file) ? SessionText.read(Files.readString(file)) : Session.FIRST;
        } catch (IOException unreadable) {
            return Session.FIRST;
        }
    }

    public Session session() {
        return session;
    }

    /** A dance lies on the stand. */
    public void note(Recent last) {
        keep(session.with(last));
    }

    /** It is practised in another way. */
    public void note(Choices choices) {
        keep(session.with(choices));
    }

    /** It looks otherwise. */
    public void noteLook(boolean isDark, boolean isStill) {
        keep(session.withLook(isDark, isStill));
    }

    /** The window stands elsewhere. */
    public void note(Rectangle window) {
        keep(session.withWindow(window));
    }

    private void keep(Session other) {
        if (other.equals(session)) {
            return;
        }
        session = other;
        writer.execute(() -> write(other));
    }

    private void write(Session kept) {
        try {
            Files.createDirectories(file.getParent());
            TextFile.write(file, SessionText.of(kept));
        } catch (IOException | Refused cannot) {
            // the next start is as if nothing had been before
        }
    }

    /** Waits until it is written. */
    public void close() throws InterruptedException {
        writer.shutdown();
        writer.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS);
    }
}
