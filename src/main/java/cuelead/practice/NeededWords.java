package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.plan.Call;
import cuelead.plan.CallWords;
import cuelead.report.Refused;
import cuelead.time.Tempo;
import cuelead.voice.SpeakableText;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The single words that dances are called with, which joined make all their calls. */
public final class NeededWords {
    /** So slow that everything that could be called has room. */
    private static final Tempo SLOW = new Tempo(60);

    private final Places places;
    private final Optional<Path> ownFigures;
    private final Set<String> words = new LinkedHashSet<>();

    private NeededWords(Places places, Optional<Path> ownFigures) {
        this.places = places;
        this.ownFigures = ownFigures;
    }

    /**
     * Each word once, in the order in which they are first called.
     *
     * @throws Refused when a sheet cannot be read
     */
    public static List<String> of(List<Path> sheets, Optional<Path> ownFigures, Places places) throws Refused {
        NeededWords needed = new NeededWords(places, ownFigures);
        for (Path sheet : sheets) {
            needed.addDance(sheet);
        }
        return List.copyOf(needed.words);
    }

    private void addDance(Path sheet) throws Refused {
        Progress unheard = (work, done) -> {};
        try (Practice practice = Practice.prepare(wish(sheet), places, unheard)) {
            for (Call call : practice.plan().calls()) {
                add(call.words());
            }
            addSteps(practice.dance());
        }
    }

    /** What has no room in the plan may have some at another tempo. */
    private void addSteps(Dance dance) {
        for (Part part : dance.parts()) {
            for (Section section : part.sections()) {
                for (Step step : section.steps()) {
                    add(CallWords.of(section, step));
                    CallWords.headAt(section, step).ifPresent(this::add);
                }
            }
        }
    }

    private void add(String call) {
        SpeakableText.of(call).map(text -> List.of(text.split(" "))).ifPresent(words::addAll);
    }

    private Wish wish(Path sheet) {
        return Wish.of(sheet).tempo(Optional.of(SLOW)).ownFigures(ownFigures).wish();
    }
}
