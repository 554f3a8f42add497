package cuelead.dance;

import java.util.List;
import java.util.Optional;

/**
 * A figure of the trade: a named pattern of actions, written for one lead foot; the other side is its mirror.
 *
 * @param id        stable key, such as {@code kick_ball_change}
 * @param name      its name, such as "kick ball change"
 * @param synonyms  other names and abbreviations
 * @param lead      the foot that the pattern is written for
 * @param pattern   one entry an action, in order
 * @param callHead  what is called ahead of the whole figure, such as "vine right"
 * @param callWords one short word an action; in round brackets when it may stay silent
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

    /** One action of the pattern: a step without a place in a sheet. */
    public record Beat(
            Counts offset, Optional<Foot> foot, Action action, Direction direction, Turn turn, Transfer transfer) {}
}
