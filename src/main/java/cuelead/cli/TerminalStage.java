package cuelead.cli;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.steer.DelayWords;
import cuelead.steer.KeyHelp;
import cuelead.steer.Stage;
import cuelead.steer.View;
import java.util.Optional;

/**
 * The terminal that the program was started from.
 *
 * @param keys of the player; empty where there are none
 */
record TerminalStage(Surroundings surroundings, Optional<PlayerKeys> keys) implements Stage {
    /** What suits where the output leads: the player's lines, one line, or a line a call. */
    @Override
    public View view(double fromSeconds, KeyHelp help) {
        if (surroundings.terminal().output() != Terminal.End.TERMINAL) {
            return new CallLines(surroundings, fromSeconds);
        }
        return keys.<View>map(open -> new PlayerScreen(open, help, surroundings.out()))
                .orElseGet(() -> new SingleLine(surroundings));
    }

    @Override
    public void tell(String sentence) {
        surroundings.err().println(sentence);
    }

    @Override
    public void tellDelays(CallsGo callsGo, Delays found) {
        surroundings.err().println("Next time: " + DelayWords.asking(callsGo, found));
    }
}
