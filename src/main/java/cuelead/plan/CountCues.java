package cuelead.plan;

import cuelead.dance.OwnCall;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.Beats;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What could be called for one count: the sheet's own words, its turn, its word, or its figure. */
final class CountCues {
    private CountCues() {}

    static Optional<Cue> of(DancedCount count, CallLevel level, Beats lead) {
        if (ownCall(count).isPresent()) {
            return ownWords(count).flatMap(words -> own(count, words, level, lead));
        }
        if (count.steps().isEmpty()) {
            return Optional.empty();
        }
        Optional<Cue> turn = TurnCues.of(count, level, lead);
        return turn.isPresent() ? turn : plain(count, level, lead);
    }

    /** What is called for a count whose turn and figure have been told. */
    static Optional<Cue> plain(DancedCount count, CallLevel level, Beats lead) {
        boolean isDanced = !count.steps().isEmpty() && ownCall(count).isEmpty();
        if (!isDanced) {
            return Optional.empty();
        }
        return level == CallLevel.WORDS ? Optional.of(WordCues.word(count, lead)) : WordCues.figure(count, lead);
    }

    /** Among words the sheet's own must be said; among figures they name one, or a turn. */
    private static Optional<Cue> own(DancedCount count, String words, CallLevel level, Beats lead) {
        boolean isTurn = !count.turn().isNone();
        if (level != CallLevel.WORDS && !isTurn && WordCues.figure(count, lead).isEmpty()) {
            return Optional.empty();
        }
        Kind kind = level == CallLevel.WORDS && !isTurn ? Kind.WORD : Kind.FIGURE;
        Need need = level == CallLevel.WORDS || isTurn ? Need.OWN_WORD : Need.WISH;
        return Optional.of(new Cue(kind, need, count, Phrase.needed(List.of(words)), lead));
    }

    static boolean isSilenced(DancedCount count) {
        return ownCall(count).filter(OwnCall::isSilence).isPresent();
    }

    private static Optional<OwnCall> ownCall(DancedCount count) {
        return count.section().ownCalls().stream()
                .filter(call -> call.count().equals(count.count()))
                .findFirst();
    }

    /**
     * What a section that begins with this count is called, fullest first: the sheet's own words, its figure's name, or
     * the turn of a step that is no figure; empty where the sheet asks for silence, or nothing is danced.
     */
    static List<Phrase> sectionHeadsOf(DancedCount count) {
        if (ownCall(count).isPresent()) {
            return ownWords(count).map(List::of).map(Phrase::needed).orElse(List.of());
        }
        boolean isPlain = count.steps().stream()
                .findFirst()
                .filter(step -> StepWords.figureOf(count.section(), step).isEmpty())
                .isPresent();
        return TurnCues.wordsAtItsCount(count)
                .filter(turn -> isPlain)
                .map(Phrase::needed)
                .orElseGet(() -> WordCues.headsOf(count));
    }

    /**
     * The same, and last the first word of the section, for where there is little time among words. A figure whose turn
     * is called at its own count begins with its first word.
     */
    static List<Phrase> shortSectionHeadsOf(DancedCount count) {
        List<Phrase> heads = sectionHeadsOf(count);
        boolean isWhole = hasOwnWords(count)
                || !count.turn().isNone()
                || TurnCues.namedWithItsTurn(count, CallLevel.WORDS).isPresent();
        if (heads.isEmpty() || isWhole) {
            return heads;
        }
        Set<String> words = new LinkedHashSet<>();
        if (TurnCues.turningFigure(count).isEmpty()) {
            heads.forEach(head -> words.add(head.words()));
        }
        StepWords.of(count.section(), count.steps().get(0)).stream()
                .filter(word -> !word.startsWith("("))
                .findFirst()
                .ifPresent(words::add);
        return Phrase.needed(List.copyOf(words));
    }

    /** Whether a section's call tells the turn of its first count too, or the figure that it begins. */
    static boolean hasTurnToldWithSection(DancedCount count, CallLevel level) {
        boolean isPlainTurn = !count.turn().isNone();
        return isPlainTurn || TurnCues.namedWithItsTurn(count, level).isPresent();
    }

    /** Whether the sheet has words of its own for this count. */
    static boolean hasOwnWords(DancedCount count) {
        return ownWords(count).isPresent();
    }

    private static Optional<String> ownWords(DancedCount count) {
        return ownCall(count).filter(call -> !call.isSilence()).map(OwnCall::words);
    }
}
