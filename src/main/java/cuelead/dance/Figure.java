package cuelead.dance;

import java.util.List;
import java.util.Optional;

/**
 * A figure of the trade: a named pattern of actions, written for one lead foot; the other side is its mirror.
 *
 * @param id        stable key, such as {@code kick_ball_change}
 * @param name      its name, such as "kick ball change"
 * @param synonyms  other names and abbreviations
 * @param lead      the foot that the pattern is written for; right by convention where no single foot leads
 * @param pattern   one entry an action, in order
 * @param callHead  what is called ahead of the whole figure, such as "vine right"
 * @param callWords one short word an action, further choices behind a slash; in round brackets when it may stay
 *                  silent
 */
public record Figure(
        String id,
        String name,
        List<String> synonyms,
        Foot lead,
        List<Beat> pattern,
        String callHead,
        List<String> callWords) {
    public Figure {
        synonyms = List.copyOf(synonyms);
        pattern = List.copyOf(pattern);
        callWords = List.copyOf(callWords);
        if (callWords.size() != pattern.size()) {
            throw new IllegalArgumentException(
                    id + ": " + callWords.size() + " words for " + pattern.size() + " actions");
        }
    }

    /** Whether an instructor has named it. */
    public boolean isOwn() {
        return id.startsWith(FigureRow.OWN);
    }

    /** The same figure begun with the other foot: left and right change places, turns go the other way. */
    public Figure mirrored() {
        return new Figure(
                id,
                name,
                synonyms,
                lead.other(),
                pattern.stream().map(Beat::mirrored).toList(),
                mirrored(callHead),
                callWords.stream().map(Figure::mirrored).toList());
    }

    /**
     * By the same feet, turning to the other side: a half triple of R, L, R to the left. The step to the side that begins
     * it then turns the dancer's back to where it went, so a step out of the turn that went forward goes back.
     */
    public Figure turnedBack() {
        boolean goesAside = pattern.get(0).direction() == Direction.SIDE;
        return withPattern(
                pattern.stream().map(beat -> beat.turnedBack(goesAside)).toList());
    }

    /** The same figure danced otherwise; as many actions. */
    public Figure withPattern(List<Beat> other) {
        return new Figure(id, name, synonyms, lead, other, callHead, callWords);
    }

    private static String mirrored(String words) {
        StringBuilder swapped = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            String other =
                    switch (word) {
                        case "left" -> "right";
                        case "right" -> "left";
                        default -> word;
                    };
            swapped.append(swapped.isEmpty() ? "" : " ").append(other);
        }
        return swapped.toString();
    }

    /** One action of the pattern: a step without a place in a sheet. */
    public record Beat(
            Counts offset, Optional<Foot> foot, Action action, Direction direction, Turn turn, Transfer transfer) {
        private Beat turnedBack(boolean behindAStepAside) {
            boolean goesOut = behindAStepAside && direction == Direction.FWD && !turn.isNone();
            return new Beat(offset, foot, action, goesOut ? Direction.BACK : direction, turn.mirrored(), transfer);
        }

        Beat mirrored() {
            return new Beat(offset, foot.map(Foot::other), action, direction.mirrored(), turn.mirrored(), transfer);
        }
    }
}
