package cuelead.rehearse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where in its dance each call of a plan stands, in words that are the same in every wall and on every day: the section, the
 * word, and the how manieth of its kind there: {@code S2 recover}, {@code S2 recover #2}.
 */
final class CallPlaces {
    private CallPlaces() {}

    /** One for each call, in their order. */
    static List<String> of(List<PlannedCall> plan) {
        Map<String, Integer> counts = new HashMap<>();
        List<String> places = new ArrayList<>();
        for (PlannedCall call : plan) {
            String place = call.section().isEmpty() ? call.word() : call.section() + " " + call.word();
            int number = counts.merge(call.wall() + " " + place, 1, Integer::sum);
            places.add(number == 1 ? place : place + " #" + number);
        }
        return places;
    }
}
