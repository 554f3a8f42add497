package cuelead.cli;

/** The program's entry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        int exitCode = CueleadCommand.run(Surroundings.ofThisProcess(), args);
        System.out.flush();
        System.err.flush();
        System.exit(exitCode);
    }
}
