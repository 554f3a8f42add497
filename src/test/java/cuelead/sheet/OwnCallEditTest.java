package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.OwnCall;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.report.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class OwnCallEditTest {
    /** Of all sheets of the tests every so manieth, for each edit reads a sheet several times. */
    private static final int SHEETS_PER_TRIED = 8;

    private static final String SHEET = SheetFixtures.SHEET;

    /** What the trade says stands for itself here. */
    private static String trade(Section section, Step step) {
        return step.action().word().replace('-', ' ');
    }

    private static String edited(String text, int section, int step, String words) throws Refused {
        return OwnCallEdit.of(text, new StepPlace(section, step), words, OwnCallEditTest::trade);
    }

    private static String line(String text, int number) {
        return text.split("\n", -1)[number - 1];
    }

    @Test
    void aCallStandsInQuotesAtTheEndOfItsLine() throws Refused {
        assertEquals("1-2 Step R to side, step L behind R  \"out\"", line(edited(SHEET, 0, 0, "out"), 4));
        assertEquals("3-4 Step R to side, touch L beside R  \"step, tap\"", line(edited(SHEET, 0, 3, "tap"), 5));
    }

    @Test
    void silenceIsAHyphen() throws Refused {
        assertEquals("5-6 Step L to side, step R behind L  \"-\"", line(edited(SHEET, 0, 4, "-"), 6));
        assertEquals("5-6 Step L to side, step R behind L  \"-\"", line(edited(SHEET, 0, 4, " \u2013 "), 6));
    }

    @Test
    void whatIsWrittenAlreadyStays() throws Refused {
        String text = SHEET.replace("rock R back, recover L", "rock R back, recover L \u201crock, and, back\u201d. ");
        assertTrue(edited(text, 1, 3, "home").contains("recover L \"rock, and, back, home\". \n"));
        assertTrue(edited(text, 1, 1, "").contains("recover L \"rock, recover, back\". \n"));
        assertTrue(edited(text, 1, 2, "").contains("recover L \"rock, and\". \n"));
    }

    @Test
    void theLastCallTakesItsQuotesAlong() throws Refused {
        assertEquals(SHEET, edited(edited(SHEET, 0, 3, "tap"), 0, 3, "").replace("  \"step\"", ""));
        assertEquals(SHEET, edited(edited(SHEET, 1, 0, "rock"), 1, 0, ""));
    }

    @Test
    void commasAndQuotesAreNoWords() {
        assertThrows(Refused.class, () -> edited(SHEET, 0, 0, "out, in"));
        assertThrows(Refused.class, () -> edited(SHEET, 0, 0, "the \"out\""));
    }

    /** Any call of any step of any sheet: what is read then is what was wanted, and nothing but quotes has changed. */
    @Test
    void whatIsReadAgainIsWhatWasWanted() throws IOException {
        Random dice = new Random(7);
        Map<String, List<String>> refused = new TreeMap<>();
        int tried = 0;
        for (Map.Entry<String, String> sheet : sheets().entrySet()) {
            if (dice.nextInt(SHEETS_PER_TRIED) != 0) {
                continue;
            }
            Optional<Dance> dance = SheetReader.read("", sheet.getValue()).dance();
            List<Section> sections =
                    dance.map(Dance::sections).orElse(Stream.empty()).toList();
            for (int round = 0; round < 3 && dance.isPresent(); round++) {
                int section = dice.nextInt(sections.size());
                if (sections.get(section).steps().isEmpty()) {
                    continue;
                }
                int step = dice.nextInt(sections.get(section).steps().size());
                String words = List.of("haul away", "-", "").get(round);
                tried++;
                try {
                    check(sheet.getValue(), new StepPlace(section, step), words);
                } catch (Refused none) {
                    refused.computeIfAbsent(sheet.getKey(), name -> new ArrayList<>())
                            .add(none.getMessage());
                }
            }
        }
        assertTrue(tried > 40, "only " + tried);
        int refusals = refused.values().stream().mapToInt(List::size).sum();
        assertTrue(refusals * 20 < tried, refusals + " of " + tried + ": " + refused);
    }

    private static void check(String text, StepPlace place, String words) throws Refused {
        String edited = OwnCallEdit.of(text, place, words, OwnCallEditTest::trade);
        Dance before = SheetReader.read("", text).dance().orElseThrow();
        Dance after = SheetReader.read("", edited).dance().orElseThrow();
        Optional<String> own = place.sectionOf(after).ownCalls().stream()
                .filter(call -> call.count().equals(place.of(before).count()))
                .map(OwnCall::words)
                .findFirst();
        if (words.isEmpty()) {
            assertTrue(own.isEmpty() || own.get().equals(trade(place.sectionOf(before), place.of(before))), edited);
        } else {
            assertEquals(Optional.of(words.equals("-") ? "" : words), own, edited);
        }
        assertEquals(unquoted(text), unquoted(edited));
    }

    /** Without what stands in quotes, and the spaces before them. */
    private static String unquoted(String text) {
        return text.replaceAll(
                "\\s*[\"\u201c\u201d\u201e\uff02][^\"\u201c\u201d\u201e\uff02\n]*[\"\u201c\u201d\u201e\uff02]", "");
    }

    private static Map<String, String> sheets() throws IOException {
        Map<String, String> all = new TreeMap<>(Layouts.all());
        for (Path folder : List.of(Path.of("cues"), Path.of("src", "test", "resources", "cuelead", "sheet"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.toString().endsWith(".txt"))
                        .forEach(file -> all.put(file.toString(), text(file)));
            }
        }
        return all;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
