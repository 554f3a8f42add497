package cuelead.dance;

import java.util.Optional;

/**
 * What a foot (or the body) does on a count, in the words of the figure table ({@code figures.tsv}).
 */
public enum Action {
    APPLEJACK("applejack"),
    BALL("ball"),
    BEHIND("behind"),
    BODYROLL("bodyroll"),
    BOUNCE("bounce"),
    BRUSH("brush"),
    BUMP("bump"),
    CHANGE("change"),
    CLAP("clap"),
    CLOSE("close"),
    CROSS("cross"),
    CROSSTOUCH("crosstouch"),
    DIG("dig"),
    DIP("dip"),
    DRAG("drag"),
    DROP("drop"),
    DWIGHT("dwight"),
    FAN("fan"),
    FLICK("flick"),
    GRIND("grind"),
    HEEL("heel"),
    HEELS_IN("heels-in"),
    HINGE("hinge"),
    HIPROLL("hiproll"),
    HITCH("hitch"),
    HOLD("hold"),
    HOOK("hook"),
    IN("in"),
    INPLACE("inplace"),
    JUMP("jump"),
    KICK("kick"),
    KNEE_POP("knee-pop"),
    LOCK("lock"),
    LUNGE("lunge"),
    OUT("out"),
    PIVOT("pivot"),
    POINT("point"),
    PRESS("press"),
    PRISSY("prissy"),
    RECOVER("recover"),
    RETURN_CENTRE("return-centre"),
    ROCK("rock"),
    SCUFF("scuff"),
    SHIMMY("shimmy"),
    SKATE("skate"),
    SLIDE("slide"),
    SPIN("spin"),
    SPLIT_HEELS("split-heels"),
    SPLIT_TOES("split-toes"),
    STEP("step"),
    STOMP("stomp"),
    STOMPUP("stompup"),
    SWAY("sway"),
    SWEEP("sweep"),
    SWIVEL_HEELS("swivel-heels"),
    SWIVEL_TOES("swivel-toes"),
    SWIVET("swivet"),
    TAP("tap"),
    TOE("toe"),
    TOES_IN("toes-in"),
    TOUCH("touch"),
    TWIST("twist"),
    UNWIND("unwind"),
    WALK("walk");

    private final String word;

    Action(String word) {
        this.word = word;
    }

    /** The word of the trade's figure table. */
    public String word() {
        return word;
    }

    /** Whether only a foot that does not bear the weight can do it. */
    public boolean needsFreeFoot() {
        return switch (this) {
            case BOUNCE, BUMP, DROP, FAN, PIVOT, SPIN, SWAY, UNWIND, HIPROLL, DWIGHT -> false;
            default -> true;
        };
    }

    public static Optional<Action> named(String word) {
        for (Action candidate : values()) {
            if (candidate.word.equals(word)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
