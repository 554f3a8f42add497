package cuelead.plan;

import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Metre;
import cuelead.english.NumberWords;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The spoken count-in before count 1: "five, six, seven, eight", in waltz "four, five, six" (common practice), each
 * word on its own beat, up to where the first calls come with their lead: a count that went on between calls, here and
 * there a word, would not be even. Where that would leave fewer than two words, it begins with the first count of its
 * eight or six. Its time is kept free.
 */
final class CountIn {
    private static final int FEWEST_WORDS = 2;

    private final Timeline timeline;
    private final DancedCount first;
    private final double earliestSeconds;
    private final CallLevel level;
    private final WordTimes words;
    private final Airtime airtime;
    private final double leadCounts;
    private final int reserved;

    /**
     * Counts in a piece of a dance.
     *
     * @param first           its first count
     * @param earliestSeconds nothing is said before
     */
    CountIn(
            Timeline timeline,
            DancedCount first,
            double earliestSeconds,
            CallSettings settings,
            WordTimes words,
            Airtime airtime) {
        this.timeline = timeline;
        this.first = first;
        this.earliestSeconds = earliestSeconds;
        level = settings.levelOf(first.run().wall());
        this.words = words;
        this.airtime = airtime;
        leadCounts = timeline.countsOf(settings.lead());
        reserved = (int) reserved(timeline, first, earliestSeconds, settings).toDecimal();
    }

    /**
     * The counts before count 1 that belong to the count-in: its bar, or the whole eight or six where the first
     * calls, which come with the lead, would leave fewer than two words of it.
     */
    static Counts reserved(Metre metre, double leadCounts) {
        boolean isBarEnough = metre.beatsInBar() - leadCounts >= FEWEST_WORDS;
        return Counts.of(isBarEnough ? metre.beatsInBar() : metre.countsInSection());
    }

    /**
     * The same for a piece of a dance; its bar alone where the longer count-in would leave no room to name the section
     * before it.
     */
    static Counts reserved(Timeline timeline, DancedCount first, double earliestSeconds, CallSettings settings) {
        Metre metre = timeline.dance().header().metre();
        Counts usual = reserved(metre, timeline.countsOf(settings.lead()));
        BeatPosition named = first.at().minus(timeline.beatsOf(usual).plus(Cues.BETWEEN_CHANGES));
        boolean isRoomBefore =
                timeline.grid().secondsAt(named.minus(Beats.ONE)) >= earliestSeconds - Cues.ROUNDING_SECONDS;
        return isRoomBefore ? usual : Counts.of(metre.beatsInBar());
    }

    /** Its words in order of time; takes their airtime. To be asked before all calls. */
    List<Call> words(List<LeftOut> leftOut) {
        List<Call> calls = new ArrayList<>();
        int last = firstWord() + Math.max(0, reserved - (int) Math.ceil(leadCounts)) - 1;
        for (int count = firstWord(); count <= last; count++) {
            Optional<Call> call = call(count);
            if (call.isPresent()) {
                airtime.take(call.get().startsSeconds(), call.get().endsSeconds());
                calls.add(call.get());
            } else {
                leftOut.add(new LeftOut(NumberWords.cardinal(count), 0, "", Integer.toString(count), reason(count)));
            }
        }
        return calls;
    }

    private int firstWord() {
        return timeline.dance().header().metre().countsInSection() - reserved + 1;
    }

    private double centreSeconds(int count) {
        int countsBefore = timeline.dance().header().metre().countsInSection() - count + 1;
        return timeline.grid().secondsAt(first.at().minus(timeline.beatsOf(Counts.of(countsBefore))));
    }

    private LeftOut.Reason reason(int count) {
        return centreSeconds(count) < earliestSeconds ? LeftOut.Reason.BEFORE_THE_MUSIC : LeftOut.Reason.GIVES_WAY;
    }

    private Optional<Call> call(int count) {
        String word = NumberWords.cardinal(count);
        double centre = centreSeconds(count);
        return words.of(word)
                .filter(length -> centre - length.beforeSeconds() >= earliestSeconds)
                .filter(length -> airtime.isFree(centre - length.beforeSeconds(), centre + length.afterSeconds()))
                .map(length -> new Call(
                        word,
                        Call.Kind.COUNT_IN,
                        level,
                        centre,
                        centre - length.beforeSeconds(),
                        centre + length.afterSeconds(),
                        OptionalDouble.empty(),
                        Beats.ZERO,
                        0,
                        "",
                        Optional.of(Count.on(count)),
                        first.facingBefore()));
    }
}
