package cuelead.sheet;

import cuelead.dance.DanceCheck;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Damages the test sheets for some minutes and reads them. Demands: no exception, no hang, and no reading over 50 ms of processor time
 * once the machine is warm (one that is slower is read again, the fastest of three counts). Tells each case that fails
 * and writes it into the temporary folder. {@code SheetStress [minutes [seed]]}, from the project's folder.
 */
public final class SheetStress {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final Path SHEETS = Path.of("src/test/resources/cuelead/sheet");
    private static final double SLOWEST_MILLISECONDS = 50;
    private static final int WARM_UP_READINGS = 400;
    private static final int MOST_EDITS = 12;
    private static final int TRIES = 3;
    private static final List<String> ODD = List.of(
            "&",
            "1&",
            "a",
            "(",
            ")",
            "[1-8]",
            "1-2",
            "1/4",
            "3:00",
            "TAG",
            "Restart",
            "wall 3",
            "Part A",
            "x2",
            "repeat",
            "\t",
            "\n\n",
            "999",
            "½",
            "R",
            "L",
            "vine",
            "with",
            "–",
            "\u00a0",
            "S3:",
            "count",
            "weight on L");

    private final List<String> sheets;
    private final Random random;
    private long read;
    private long failed;
    private double slowestMilliseconds;

    private SheetStress(List<String> sheets, long seed) {
        this.sheets = sheets;
        random = new Random(seed);
    }

    public static void main(String[] arguments) throws IOException {
        double minutes = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 10;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        SheetStress stress = new SheetStress(sheets(), seed);
        stress.run((long) (minutes * 60e9));
        System.exit(stress.failed == 0 ? 0 : 1);
    }

    private static List<String> sheets() throws IOException {
        List<String> sheets = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SHEETS)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".txt"))
                    .sorted()
                    .toList()) {
                sheets.add(Files.readString(file));
            }
        }
        return sheets;
    }

    private void run(long nanoseconds) throws IOException {
        for (int i = 0; i < WARM_UP_READINGS; i++) {
            milliseconds(sheets.get(i % sheets.size()));
        }
        Watch watch = new Watch();
        long end = System.nanoTime() + nanoseconds;
        while (System.nanoTime() < end) {
            String sheet = damaged(sheets.get(random.nextInt(sheets.size())));
            watch.begin(sheet);
            tryOne(sheet);
            watch.end();
        }
        System.out.printf("%d sheets read, %d failed, the slowest took %.1f ms%n", read, failed, slowestMilliseconds);
    }

    private void tryOne(String sheet) throws IOException {
        read++;
        try {
            double least = milliseconds(sheet);
            for (int i = 1; i < TRIES && least > SLOWEST_MILLISECONDS; i++) {
                least = Math.min(least, milliseconds(sheet));
            }
            slowestMilliseconds = Math.max(slowestMilliseconds, least);
            if (least > SLOWEST_MILLISECONDS) {
                tell(sheet, String.format("%.1f ms", least));
            }
        } catch (RuntimeException | StackOverflowError broken) {
            tell(
                    sheet,
                    broken
                            + Stream.of(broken.getStackTrace())
                                    .findFirst()
                                    .map(at -> " at " + at)
                                    .orElse(""));
        }
    }

    private static double milliseconds(String sheet) {
        long start = CLOCK.getCurrentThreadCpuTime();
        ReadSheet reading = SheetReader.read("damaged.txt", sheet);
        reading.dance().ifPresent(dance -> DanceCheck.check(dance, "damaged.txt"));
        return (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
    }

    private void tell(String sheet, String what) throws IOException {
        failed++;
        Path file = Files.createTempFile("damaged", ".txt");
        Files.writeString(file, sheet);
        System.out.println(file + ": " + what);
    }

    private String damaged(String sheet) {
        String text = sheet;
        int edits = 1 + random.nextInt(MOST_EDITS);
        for (int i = 0; i < edits; i++) {
            text = random.nextBoolean() ? edited(text, "\n") : edited(text, " ");
        }
        return text;
    }

    /** One piece taken out, doubled, swapped with another, torn, or something odd put in front of it. */
    private String edited(String text, String between) {
        List<String> pieces = new ArrayList<>(List.of(text.split(between, -1)));
        int at = random.nextInt(pieces.size());
        String piece = pieces.get(at);
        switch (random.nextInt(5)) {
            case 0 -> pieces.remove(at);
            case 1 -> pieces.add(random.nextInt(pieces.size()), piece);
            case 2 -> Collections.swap(pieces, at, random.nextInt(pieces.size()));
            case 3 -> pieces.set(at, piece.substring(0, random.nextInt(piece.length() + 1)));
            default -> pieces.add(at, ODD.get(random.nextInt(ODD.size())));
        }
        return String.join(between, pieces);
    }

    /** Ends the program with the sheet in hand where a reading hangs. */
    private static final class Watch {
        private static final long HANG_MILLISECONDS = 30_000;
        private static final long LOOK_MILLISECONDS = 500;

        private volatile String sheet = "";
        private volatile long since;

        Watch() {
            Thread thread = new Thread(this::look, "watch");
            thread.setDaemon(true);
            thread.start();
        }

        void begin(String text) {
            sheet = text;
            since = System.currentTimeMillis();
        }

        void end() {
            sheet = "";
        }

        private void look() {
            try {
                while (true) {
                    Thread.sleep(LOOK_MILLISECONDS);
                    String reading = sheet;
                    if (!reading.isEmpty() && System.currentTimeMillis() - since > HANG_MILLISECONDS) {
                        System.out.println("A reading hangs:\n" + reading);
                        Runtime.getRuntime().halt(2);
                    }
                }
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
