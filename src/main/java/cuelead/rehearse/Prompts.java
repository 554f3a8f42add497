package cuelead.rehearse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Which calls of a rehearsal are prompted. Help is best withdrawn step by step (the fading of prompts: Wolery and Gast 1984,
 * "Effective and efficient procedures for the transfer of stimulus control"), so it gets less from wall to wall; what went
 * wrong the last times is prompted in every wall.
 */
public final class Prompts {
    /** Where nothing is known of walls, so many parts of the plan stand for them. */
    private static final int PARTS = 4;

    /** How much is prompted. */
    public enum Amount {
        ALL,
        /** All of the first wall, and less from wall to wall. */
        FEWER,
        /** What went wrong the last times; as {@link #FEWER} where nothing is known of them. */
        WRONG,
        NONE
    }

    private final List<PlannedCall> plan;
    private final List<String> places;
    private final Set<String> wrong;
    private final boolean isFirstTime;

    /** @param plan in order of time */
    public Prompts(List<PlannedCall> plan, Progress progress) {
        this.plan = plan;
        places = CallPlaces.of(plan);
        wrong = progress.notOnTime();
        isFirstTime = progress.rehearsals().isEmpty();
    }

    /** The prompts in order of time. */
    public List<Prompt> of(Amount amount) {
        List<Prompt> prompts = new ArrayList<>();
        int others = 0;
        for (int i = 0; i < plan.size(); i++) {
            boolean isOther = !isFirstOfSection(i) && !plan.get(i).isTurn();
            others += isOther ? 1 : 0;
            if (isPrompted(i, amount, isOther && others % 2 == 0)) {
                prompts.add(Prompt.of(plan.get(i)));
            }
        }
        return prompts;
    }

    private boolean isPrompted(int i, Amount amount, boolean isEverySecond) {
        return switch (amount) {
            case ALL -> true;
            case NONE -> false;
            case WRONG -> isFirstTime ? isStillHelped(i, isEverySecond) : wrong.contains(places.get(i));
            case FEWER -> wrong.contains(places.get(i)) || isStillHelped(i, isEverySecond);
        };
    }

    /** In the first wall all, then turns, beginnings of sections and every second other, then those two, then only beginnings. */
    private boolean isStillHelped(int i, boolean isEverySecond) {
        return switch (wall(i)) {
            case 0, 1 -> true;
            case 2 -> isFirstOfSection(i) || plan.get(i).isTurn() || isEverySecond;
            case 3 -> isFirstOfSection(i) || plan.get(i).isTurn();
            case 4 -> isFirstOfSection(i);
            default -> false;
        };
    }

    private int wall(int i) {
        boolean knowsWalls = plan.get(plan.size() - 1).wall() > 0;
        return knowsWalls ? plan.get(i).wall() : 1 + PARTS * i / plan.size();
    }

    private boolean isFirstOfSection(int i) {
        PlannedCall call = plan.get(i);
        if (call.section().isEmpty()) {
            return false;
        }
        return i == 0
                || plan.get(i - 1).wall() != call.wall()
                || !plan.get(i - 1).section().equals(call.section());
    }

    /** The calls that are hard for this caller: what went wrong the last times, and before the first time the turns. */
    public List<PlannedCall> hard() {
        List<PlannedCall> hard = new ArrayList<>();
        for (int i = 0; i < plan.size(); i++) {
            if (isFirstTime ? plan.get(i).isTurn() : wrong.contains(places.get(i))) {
                hard.add(plan.get(i));
            }
        }
        return hard;
    }
}
