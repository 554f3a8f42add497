package cuelead.plan;

/** Makes the note of a cue that was not called. */
final class LeftOuts {
    private LeftOuts() {}

    static LeftOut of(Cue cue, LeftOut.Reason reason) {
        DancedCount target = cue.target();
        return new LeftOut(
                cue.phrases().get(0).words(),
                target.run().wall(),
                target.section().name(),
                target.count().label(),
                reason);
    }
}
