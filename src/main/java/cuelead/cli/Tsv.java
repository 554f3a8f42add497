package cuelead.cli;

import java.util.List;

/** One line of values parted by tabs; a tab or a line end within a value becomes a space. */
final class Tsv {
    private Tsv() {}

    static String line(List<String> values) {
        return String.join(
                        "\t",
                        values.stream()
                                .map(value -> value.replaceAll("[\t\r\n]+", " "))
                                .toList())
                + "\n";
    }
}
