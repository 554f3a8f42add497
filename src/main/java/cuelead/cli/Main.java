package cuelead.cli;

/** The program's entry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.err.println("Cuelead");
    }
}
