package cuelead.sheet;

import cuelead.dance.Action;

/** Whether an action may last longer than its count, and how unlikely that is. */
final class Stretching {
    private Stretching() {}

    /** What is over when it has begun: over more counts it would stand still, and sheets write that as a hold. */
    static boolean isDoneAtOnce(Action action) {
        return switch (action) {
            case TOUCH, TAP, POINT, HEEL, TOE, DIG, KICK, FLICK, HITCH, HOOK, BRUSH, SCUFF, CROSSTOUCH -> true;
            default -> false;
        };
    }

    /** Less is likelier. */
    static int cost(Action action) {
        return switch (action) {
            case HOLD, DRAG, SWEEP, SLIDE, SHIMMY, HIPROLL, BODYROLL, KNEE_POP -> 1;
            default -> 12;
        };
    }
}
