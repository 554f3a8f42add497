package cuelead.dance;

/** A starting weight that its sheet states wrongly, told from a dance that begins and ends as if it were the other one. */
final class StartWeight {
    private StartWeight() {}

    static boolean isWrong(Dance dance) {
        Weight stated = dance.header().startWeight();
        boolean told = dance.claims().weightLine() > 0 && (stated == Weight.LEFT || stated == Weight.RIGHT);
        Part first = dance.parts().get(0);
        boolean begins = WallWalk.steps(first).stream()
                .filter(step -> step.foot().isPresent())
                .findFirst()
                .filter(step ->
                        step.action().needsFreeFoot() && stated.isOn(step.foot().orElseThrow()))
                .isPresent();
        return told && begins && WallWalk.weightAfter(first, first.counts(), stated) == other(stated);
    }

    static Dance corrected(Dance dance) {
        Header head = dance.header();
        Header other = new Header(
                head.title(),
                head.metre(),
                head.statedCounts(),
                head.statedWalls(),
                head.level(),
                head.statedTempo(),
                head.song(),
                head.countOne(),
                head.leadBeats(),
                head.countRate(),
                other(head.startWeight()));
        return new Dance(
                other, dance.parts(), dance.sequence(), dance.tags(), dance.restarts(), dance.ending(), dance.claims());
    }

    private static Weight other(Weight weight) {
        return weight == Weight.LEFT ? Weight.RIGHT : Weight.LEFT;
    }
}
