package cuelead.cli;

import cuelead.practice.WarmUp;

/** The program's entry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        if (Subcommands.arePlayed(args)) {
            WarmUp.begin();
        }
        int exitCode = CueleadCommand.run(Surroundings.ofThisProcess(), args);
        System.out.flush();
        System.err.flush();
        System.exit(exitCode);
    }
}
