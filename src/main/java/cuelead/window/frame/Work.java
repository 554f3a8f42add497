package cuelead.window.frame;

import cuelead.report.Refused;
import java.awt.Dimension;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;

/** Does longer work, one piece after the other, and shows how far it is. Used on the thread of events. */
public final class Work extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<String> tell;
    private final transient Queue<Piece<?>> waiting = new ArrayDeque<>();
    private transient Piece<?> now;
    private final JProgressBar bar = new JProgressBar(0, 100);

    /**
     * With nothing to do.
     *
     * @param tell is told why something cannot be done
     */
    public Work(Consumer<String> tell) {
        this.tell = tell;
        setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
        bar.setStringPainted(true);
        bar.setPreferredSize(new Dimension(420, 24));
        bar.getAccessibleContext().setAccessibleName("How far it is");
        JButton stop = Controls.button("Break it off", 'B', this::breakOff);
        add(stop);
        add(Box.createHorizontalStrut(12));
        add(bar);
        setVisible(false);
    }

    /** As {@link Host#work}. */
    public <T> void begin(String what, Job<T> job, Consumer<T> then) {
        waiting.add(new Piece<>(what, job, then));
        if (now == null) {
            next();
        }
    }

    /** Breaks off what is done now and what waits. */
    public void breakOff() {
        waiting.clear();
        if (now != null) {
            now.breakOff();
        }
    }

    private void next() {
        now = waiting.poll();
        setVisible(now != null);
        if (now != null) {
            show(now.what, 0);
            now.start();
        }
    }

    private void show(String what, double done) {
        bar.setString(what);
        bar.setValue((int) Math.round(100 * done));
    }

    private final class Piece<T> {
        private final String what;
        private final Job<T> job;
        private final Consumer<T> then;
        private final Thread thread = new Thread(this::run, "cuelead-work");
        private volatile boolean isBrokenOff;

        Piece(String what, Job<T> job, Consumer<T> then) {
            this.what = what;
            this.job = job;
            this.then = then;
            thread.setDaemon(true);
        }

        void start() {
            thread.start();
        }

        void breakOff() {
            isBrokenOff = true;
            thread.interrupt();
        }

        private void run() {
            try {
                T result = job.run(this::at);
                end(() -> then.accept(result));
            } catch (Refused refused) {
                end(() -> tell.accept(refused.getMessage()));
            } catch (InterruptedException | CancellationException brokenOff) {
                end(this::tellBrokenOff);
            } catch (OutOfMemoryError none) {
                end(() -> tell.accept("There is not enough memory for this; close other programs and try again."));
            } catch (RuntimeException | Error mistake) {
                end(() -> tell.accept("Cuelead made a mistake of its own (" + mistake + ")."));
                throw mistake;
            }
        }

        private void end(Runnable last) {
            SwingUtilities.invokeLater(() -> {
                if (isBrokenOff) {
                    tellBrokenOff();
                } else {
                    last.run();
                }
                next();
            });
        }

        private void tellBrokenOff() {
            tell.accept("Broken off: " + what + ".");
        }

        private void at(String work, double done) {
            if (isBrokenOff) {
                throw new CancellationException(what);
            }
            SwingUtilities.invokeLater(() -> show(work, done));
        }
    }
}
