package cuelead.cli;

import cuelead.rehearse.Prompt;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.steer.Told;
import cuelead.studio.RehearsalScene;
import cuelead.studio.RehearsalView;
import java.util.Optional;

/** A rehearsal in a line a prompt, for another program. */
final class LinedRehearsal implements RehearsalView {
    static final String CLICKS =
            "How late is this microphone? Hold one side of the headphones close to it: eight soft clicks are played.";

    private final Surroundings surroundings;

    private LinedRehearsal(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** What suits where input and output lead: this, or a terminal with keys. */
    static RehearsalView of(Surroundings surroundings) throws Refused {
        Terminal terminal = surroundings.terminal();
        boolean isTerminal = terminal.input() == Terminal.End.TERMINAL && terminal.errors() == Terminal.End.TERMINAL;
        Optional<RawKeys> keys = isTerminal ? RawKeys.open() : Optional.empty();
        return keys.<RehearsalView>map(open -> new KeyedRehearsal(surroundings, open))
                .orElseGet(() -> new LinedRehearsal(surroundings));
    }

    @Override
    public void show(RehearsalScene scene) {
        // only prompts are told
    }

    @Override
    public void prompt(Prompt prompt, double songSeconds) {
        tell(Told.minutes(songSeconds) + "  " + prompt.call().word());
    }

    @Override
    public void level(float peak) {
        // only prompts are told
    }

    @Override
    public void tell(String sentence) {
        surroundings.err().println(sentence);
        surroundings.err().flush();
    }

    @Override
    public void ask(Question question) {
        if (question == Question.CLICKS) {
            tell(CLICKS);
        }
    }

    @Override
    public boolean takesOrders() {
        return false;
    }

    @Override
    public Optional<Order> order(Speakers speakers, long timeoutMillis) throws InterruptedException {
        speakers.awaitEnd(timeoutMillis);
        return Optional.empty();
    }

    @Override
    public void close() {
        // nothing was taken
    }
}
