package cuelead.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class WordFitTest {
    private static final DancedCount ANY_COUNT =
            PlanFixtures.timeline(PlanFixtures.eights(0), 120, 60).counts().get(0);

    /** No other choice without overlaps is worth more: checked against every choice there is. */
    @Property(tries = 300, seed = "20261125")
    void theChoiceIsTheBestOfAll(@ForAll Random random) {
        List<List<Offer>> offers = new ArrayList<>();
        for (int cue = 0; cue < 6; cue++) {
            List<Offer> ofCue = new ArrayList<>();
            for (int i = random.nextInt(3); i >= 0; i--) {
                double start = cue * 0.4 + random.nextDouble() * 0.3;
                ofCue.add(offer(start, start + 0.2 + random.nextDouble() * 0.7, 1 + random.nextInt(20)));
            }
            offers.add(ofCue);
        }
        double chosen = WordFit.best(offers).stream()
                .flatMap(Optional::stream)
                .mapToDouble(o -> o.phrase().worth())
                .sum();
        assertEquals(bestByTrying(offers, 0, Optional.empty()), chosen, 1e-9);
    }

    private static double bestByTrying(List<List<Offer>> offers, int cue, Optional<Offer> last) {
        if (cue == offers.size()) {
            return 0;
        }
        double best = bestByTrying(offers, cue + 1, last);
        for (Offer offer : offers.get(cue)) {
            if (last.isEmpty() || last.get().isBefore(offer)) {
                best = Math.max(best, offer.phrase().worth() + bestByTrying(offers, cue + 1, Optional.of(offer)));
            }
        }
        return best;
    }

    private static Offer offer(double start, double end, double worth) {
        Cue cue = new Cue(Call.Kind.WORD, Cue.Need.WISH, ANY_COUNT, List.of(), Beats.of(2));
        return new Offer(cue, new Phrase("word", worth), Beats.of(2), start, start + 0.1, end);
    }
}
