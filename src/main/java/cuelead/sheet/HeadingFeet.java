package cuelead.sheet;

import cuelead.dance.FigureRun;
import cuelead.dance.Foot;
import cuelead.dance.Section;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Figures that a heading names by the foot with which they begin, "right shuffle", and whether that foot begins them. */
final class HeadingFeet {
    /**
     * First words of figures for which a foot before the name is the one that begins: others are named by the foot, or
     * the side, of their turn, or of where they go.
     */
    private static final Set<String> NAMED_BY_FIRST_FOOT = Set.of(
            "shuffle",
            "coaster",
            "sailor",
            "kick_ball",
            "mambo",
            "lock_shuffle",
            "scissor",
            "toe_strut",
            "heel_strut",
            "twinkle");

    private HeadingFeet() {}

    /**
     * A figure as the heading names it.
     *
     * @param id   of the figure
     * @param foot that begins it
     */
    record Named(String id, String name, Foot foot) {}

    /** The first that is danced in the section, but only from the other foot. */
    static Optional<Named> notDanced(Section section, List<Phrase> phrases) {
        return phrases.stream()
                .flatMap(phrase -> named(section.heading(), phrase).stream())
                .filter(named -> isFromTheOtherFoot(named, section.figures()))
                .findFirst();
    }

    /** The foot must stand right before the name, and no turn beside it, which might be what is to the right. */
    private static Optional<Named> named(String heading, Phrase phrase) {
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(heading, phrase.column() - 1));
        boolean before = !terms.isEmpty() && terms.get(0).is(Term.Kind.FOOT);
        return phrase.figure()
                .filter(call -> before && call.feet().size() == 1 && call.turn().isEmpty())
                .map(call -> new Named(
                        call.row().figure().id(),
                        call.row().figure().name(),
                        call.feet().get(0)));
    }

    private static boolean isFromTheOtherFoot(Named named, List<FigureRun> danced) {
        return NAMED_BY_FIRST_FOOT.stream().filter(named.id()::startsWith).anyMatch(word -> {
            List<Foot> leads = danced.stream()
                    .filter(run -> run.figure().id().startsWith(word))
                    .map(FigureRun::lead)
                    .toList();
            return !leads.isEmpty() && !leads.contains(named.foot());
        });
    }
}
