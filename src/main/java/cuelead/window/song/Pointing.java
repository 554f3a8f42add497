package cuelead.window.song;

import cuelead.time.BeatGrid;
import cuelead.window.song.Selected.Reach;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;

/** Points at beats of a song by mouse and keys, and gives other keys on. Used on the thread of events. */
final class Pointing {
    private static final double MILLIS = 1000;

    private final SongView rows;
    private final Follower follower;
    /** Where in the song was pointed, so that what is selected does not wander when beats change. */
    private double seconds;

    private double anchorSeconds;
    private boolean hasMoved;

    /** Is told what is wanted. */
    interface Follower {
        /** Another beat is selected, or a stretch. */
        void pointed();

        void ordered(SongOrder order);

        /**
         * The space bar went down.
         *
         * @param agoSeconds how long ago
         */
        void space(double agoSeconds);

        /** All is to be left. */
        void escaped();
    }

    Pointing(SongView rows, Follower follower) {
        this.rows = rows;
        this.follower = follower;
        rows.addKeyListener(new Keys());
        Mouse mouse = new Mouse();
        rows.addMouseListener(mouse);
        rows.addMouseMotionListener(mouse);
    }

    void select(Selected selected) {
        rows.rows().ifPresent(all -> {
            seconds = all.cell(selected.beat()).seconds();
            anchorSeconds = all.cell(selected.anchor()).seconds();
        });
        hasMoved = true;
        rows.select(selected);
        follower.pointed();
    }

    /** The beats have changed. */
    void stay(BeatGrid beats) {
        rows.select(Selected.nearest(seconds, anchorSeconds, beats));
        follower.pointed();
    }

    /** Whether was pointed elsewhere since {@link #rest}. */
    boolean hasMoved() {
        return hasMoved;
    }

    void rest() {
        hasMoved = false;
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent key) {
            if (key.getKeyCode() == KeyEvent.VK_SPACE) {
                follower.space(Math.max(0, System.currentTimeMillis() - key.getWhen()) / MILLIS);
            } else if (key.getKeyCode() == KeyEvent.VK_ESCAPE) {
                follower.escaped();
            } else {
                rows.rows()
                        .flatMap(all -> SongKeys.moved(key, rows.selected(), all))
                        .ifPresentOrElse(
                                Pointing.this::select, () -> SongKeys.order(key).ifPresent(follower::ordered));
            }
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent pressed) {
            rows.requestFocusInWindow();
            point(pressed, pressed.isShiftDown() ? Reach.A_STRETCH : Reach.A_BEAT);
        }

        @Override
        public void mouseDragged(MouseEvent dragged) {
            point(dragged, Reach.A_STRETCH);
        }

        private void point(MouseEvent at, Reach reach) {
            rows.rows()
                    .ifPresent(all -> rows.beatAt(at.getX(), at.getY())
                            .ifPresent(beat -> select(rows.selected().to(beat, reach, all))));
        }
    }
}
