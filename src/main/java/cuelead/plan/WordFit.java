package cuelead.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chooses among many offers the ones that are worth most together and do not overlap: weighted interval scheduling
 * by dynamic programming (Kleinberg and Tardos, "Algorithm design", section 6.1), with several offers a cue of
 * which at most one is taken, in the order of the cues.
 */
final class WordFit {
    private WordFit() {}

    /**
     * Chooses at most one offer a cue.
     *
     * @param offersByCue the offers of each cue, cues in order of their beats; offers that meet no taken time
     * @return the chosen offer of each cue, where it has one
     */
    static List<Optional<Offer>> best(List<List<Offer>> offersByCue) {
        List<Node> nodes = new ArrayList<>();
        for (int cue = 0; cue < offersByCue.size(); cue++) {
            int earlier = nodes.size();
            for (Offer offer : offersByCue.get(cue)) {
                nodes.add(Node.after(bestBefore(nodes.subList(0, earlier), offer), offer, cue));
            }
        }
        return chain(worthiest(nodes.stream()), offersByCue.size());
    }

    /** The best chain that has ended, with a breath, before this offer starts. */
    private static Optional<Node> bestBefore(List<Node> earlier, Offer offer) {
        return worthiest(earlier.stream().filter(node -> node.offer.isBefore(offer)));
    }

    private static Optional<Node> worthiest(Stream<Node> nodes) {
        return nodes.max(Comparator.comparingDouble(node -> node.worth));
    }

    private static List<Optional<Offer>> chain(Optional<Node> last, int cues) {
        List<Optional<Offer>> chosen = new ArrayList<>(Collections.nCopies(cues, Optional.empty()));
        for (Optional<Node> node = last; node.isPresent(); node = node.get().previous) {
            chosen.set(node.get().cue, Optional.of(node.get().offer));
        }
        return chosen;
    }

    /** The best chain of offers that ends with this one. */
    private record Node(Offer offer, int cue, Optional<Node> previous, double worth) {
        static Node after(Optional<Node> previous, Offer offer, int cue) {
            double before = previous.map(Node::worth).orElse(0.0);
            return new Node(offer, cue, previous, before + offer.phrase().worth());
        }
    }
}
