package cuelead.sheet;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a line about a restart tells of the steps before it.
 *
 * @param change steps that no other wall dances; empty where it tells of none
 * @param doubt  a sentence on why they are not called; empty where they are, or none are told
 */
record RestartSteps(Optional<StepChange> change, String doubt) {
    private static final String LOST =
            "The steps that are danced before this restart are not understood, so they are not called.";
    private static final String UNCLEAR =
            "It is not said whether the steps before this restart come behind its last count or"
                    + " in its place, so they are not called.";

    static RestartSteps of(SheetLine line) {
        Optional<StepChange> told = StepChangeReader.read(line);
        Optional<ReplacedSteps> replaced = ReplacedSteps.in(line.text()).filter(ReplacedSteps::areSteps);
        boolean unclear = told.isEmpty() && replaced.isEmpty() && AddedSteps.areUnclear(line);
        Optional<StepChange> understood = told.filter(StepChange::fits)
                .or(() -> replaced.flatMap(steps -> inPlace(steps, line)))
                .or(() -> unclear ? Optional.empty() : AddedSteps.in(line))
                .or(() -> StepChangeReader.counted(line));
        boolean lost = told.isPresent() || replaced.isPresent() || AddedSteps.areLost(line);
        return understood.isPresent()
                ? new RestartSteps(understood, "")
                : new RestartSteps(told, unclear ? UNCLEAR : lost ? LOST : "");
    }

    /** "After 16 counts, replace the rock with stomp R, stomp L": the last counts before the restart. */
    private static Optional<StepChange> inPlace(ReplacedSteps replaced, SheetLine line) {
        OptionalInt place = AddedSteps.place(line);
        return place.isEmpty()
                ? Optional.empty()
                : StepChange.upTo(place.getAsInt(), AddedSteps.stepsFrom(line, replaced.to()));
    }
}
