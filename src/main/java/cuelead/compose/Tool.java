package cuelead.compose;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Runs a program of the system to its end. */
final class Tool {
    private static final int LONGEST_COMPLAINT = 300;

    private Tool() {}

    /**
     * @param command    the program's name and its arguments
     * @param howToGetIt what the user does when it is not there, one sentence
     */
    static void run(List<String> command, String howToGetIt) throws Refused {
        String name = command.get(0);
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            int status = process.waitFor();
            if (status != 0) {
                throw new Refused(name + " ended with status " + status + " and said: "
                        + said.substring(Math.max(0, said.length() - LONGEST_COMPLAINT)));
            }
        } catch (IOException e) {
            throw new Refused("The program " + name + " cannot be started; " + howToGetIt, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refused("Interrupted while " + name + " was running.", e);
        }
    }
}
