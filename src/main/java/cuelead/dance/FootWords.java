package cuelead.dance;

/** What a foot does, as a teacher says it: "touches its heel", "steps together", "kicks". */
final class FootWords {
    private FootWords() {}

    /** Behind "the right foot". */
    static String of(Action action) {
        return switch (action) {
            case BALL -> "steps on its ball";
            case BEHIND -> "steps behind";
            case CLOSE -> "steps together";
            case CHANGE, INPLACE -> "steps in place";
            case OUT -> "steps out";
            case IN -> "steps in";
            case PRISSY -> "walks";
            case HEEL -> "touches its heel";
            case TOE -> "touches its toe";
            case CROSSTOUCH -> "touches across";
            case DIG -> "digs its heel";
            case GRIND -> "grinds its heel";
            case STOMPUP -> "stomps up";
            default -> thirdPerson(action.word().replace('-', ' '));
        };
    }

    private static String thirdPerson(String verb) {
        boolean hisses = verb.endsWith("s") || verb.endsWith("sh") || verb.endsWith("ch");
        return verb + (hisses ? "es" : "s");
    }
}
