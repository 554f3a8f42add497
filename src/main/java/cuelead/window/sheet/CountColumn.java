package cuelead.window.sheet;

import cuelead.listing.ListedLine;
import java.util.List;

/** A column of a dance that is listed count by count. */
enum CountColumn {
    COUNT("Count", "16&"),
    ACTION("Step", "touch together"),
    FOOT("Foot", "right"),
    WEIGHT("Weight", "Weight"),
    TURN("Turn", "3/4 R"),
    FACING("Faces", "12:00"),
    CALL("Call", "together");

    private final String head;
    private final String widest;

    CountColumn(String head, String widest) {
        this.head = head;
        this.widest = widest;
    }

    String head() {
        return head;
    }

    /** A usual long entry. */
    String widest() {
        return widest;
    }

    /** Whether it takes the room that others leave. */
    boolean isWide() {
        return this == ACTION || this == CALL;
    }

    String of(ListedLine.Counted line) {
        return switch (this) {
            case COUNT -> line.count();
            case ACTION -> line.what();
            case FOOT -> line.foot();
            case WEIGHT -> line.weight();
            case TURN -> line.turn();
            case FACING -> line.facing();
            case CALL -> line.call();
        };
    }

    /** From 0. */
    int column() {
        return List.of(values()).indexOf(this);
    }

    static CountColumn at(int column) {
        return values()[column];
    }
}
