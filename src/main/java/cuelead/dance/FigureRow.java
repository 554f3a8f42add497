package cuelead.dance;

import java.util.List;
import java.util.Set;

/**
 * A row of the figure table: a figure and what is known of it.
 *
 * @param figure     the figure
 * @param kind       what sort of row it is
 * @param travel     which way it travels, as the table says it: {@code right}, {@code fwd}, {@code none} ...
 * @param netTurn     the sum of its turns
 * @param freeEnding whether writers end it differently, so that the sheet's last action counts
 * @param freeTurn   whether the turn may fall on another of its counts
 * @param sources    codes of the published lists that it rests on
 * @param status     how well they agree: agreed, single, cp, differs, differs-cp, weak
 */
public record FigureRow(
        Figure figure,
        Kind kind,
        String travel,
        Turn netTurn,
        boolean freeEnding,
        boolean freeTurn,
        String sources,
        String status) {
    /** Sort of a row. */
    public enum Kind {
        /** A single movement. */
        ACTION,
        /** A named pattern. */
        FIGURE,
        /** Another name for a pattern that has its own row. */
        ALIAS,
        /** A pattern that an instructor has named. */
        OWN
    }

    /** What the ids of an instructor's own figures begin with. */
    public static final String OWN = "own ";

    /** A figure of an instructor's own. */
    public static FigureRow own(Figure figure, Turn netTurn) {
        return new FigureRow(figure, Kind.OWN, "none", netTurn, false, false, "", "own");
    }

    /** The same row with its figure danced otherwise. */
    public FigureRow with(Figure other) {
        return new FigureRow(other, kind, travel, netTurn, freeEnding, freeTurn, sources, status);
    }

    /** Whether it is looked for in steps: patterns of two actions or more that are no alias, and own names. */
    boolean isRecognised() {
        return kind == Kind.OWN || (kind != Kind.ALIAS && figure.pattern().size() > 1);
    }

    /** Whether it is its quick rhythm that makes it: side, together, side on three whole counts is no shuffle. */
    boolean livesByItsRhythm() {
        return List.of(figure.name().split(" ")).stream().anyMatch(TRIPLES::contains);
    }

    private static final Set<String> TRIPLES = Set.of("shuffle", "chasse", "triple");

    /** Whether it is named after the way it travels, against its leading foot: a weave that crosses right goes left. */
    public boolean travelsAgainstItsLead() {
        return travel.equals(figure.lead().other().word());
    }
}
