package cuelead.rehearse;

import cuelead.report.Refused;
import cuelead.voice.Voice;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The closed list of words that may be heard in a take: those of the plan, those of the trade, and what slips in between. */
final class CallWords {
    private CallWords() {}

    /**
     * With their sounds; a word that the voice cannot say is left out.
     *
     * @param voice one that tells the sounds of its clips
     */
    static List<Pronounced> with(List<PlannedCall> plan, Voice voice) throws Refused {
        Set<String> words = new LinkedHashSet<>();
        plan.forEach(call -> words.add(call.word()));
        words.addAll(usual());
        List<Pronounced> pronounced = new ArrayList<>();
        for (String word : words) {
            Pronounced.by(voice, word).ifPresent(pronounced::add);
        }
        return pronounced;
    }

    private static List<String> usual() {
        try (InputStream in = CallWords.class.getResourceAsStream("call-words.txt")) {
            if (in == null) {
                throw new IllegalStateException("the list of words is missing: call-words.txt");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
