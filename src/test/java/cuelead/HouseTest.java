package cuelead;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The rooms of the house and the few arrows between them; no others may grow. */
class HouseTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("cuelead");

    /** Room to the rooms that it may import. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("time", Set.of()),
            Map.entry("report", Set.of()),
            Map.entry("english", Set.of()),
            Map.entry("document", Set.of("report")),
            Map.entry("dsp", Set.of("time")),
            Map.entry("dance", Set.of("time", "report")),
            Map.entry("sheet", Set.of("document", "dance", "report", "time", "english")),
            Map.entry("sound", Set.of("time", "dsp")),
            Map.entry("song", Set.of("report", "dsp", "sound", "time")),
            Map.entry("plan", Set.of("dance", "time", "report", "english")),
            Map.entry("listing", Set.of("dance", "sheet", "plan", "report")),
            Map.entry("lesson", Set.of("plan", "dance", "time", "report", "english")),
            Map.entry("voice", Set.of("report", "sound", "dsp", "time", "english")),
            Map.entry("output", Set.of("report", "sound", "time")),
            Map.entry("rehearse", Set.of("report", "voice", "dsp", "time")),
            Map.entry("compose", Set.of("report", "dsp", "time")),
            Map.entry(
                    "practice", Set.of("time", "report", "dance", "sheet", "song", "plan", "lesson", "voice", "sound")),
            Map.entry(
                    "steer",
                    Set.of(
                            "time",
                            "report",
                            "dance",
                            "song",
                            "plan",
                            "lesson",
                            "voice",
                            "sound",
                            "output",
                            "practice")),
            Map.entry(
                    "studio",
                    Set.of(
                            "time",
                            "report",
                            "dance",
                            "song",
                            "plan",
                            "voice",
                            "sound",
                            "output",
                            "rehearse",
                            "dsp",
                            "practice",
                            "steer")),
            Map.entry(
                    "cli",
                    Set.of(
                            "time",
                            "report",
                            "document",
                            "dance",
                            "sheet",
                            "listing",
                            "song",
                            "plan",
                            "lesson",
                            "voice",
                            "sound",
                            "output",
                            "rehearse",
                            "dsp",
                            "practice",
                            "steer",
                            "studio",
                            "window")),
            Map.entry(
                    "window",
                    Set.of(
                            "time",
                            "report",
                            "dance",
                            "document",
                            "sheet",
                            "song",
                            "listing",
                            "plan",
                            "lesson",
                            "voice",
                            "sound",
                            "output",
                            "rehearse",
                            "practice",
                            "steer",
                            "studio")));

    @Test
    void theRoomsHaveNoCycle() {
        slices().matching("cuelead.(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void everyArrowIsAllowed() {
        Set<String> unknown = new TreeSet<>();
        for (JavaClass from : HOUSE) {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                String target = room(dependency.getTargetClass());
                String origin = room(from);
                if (!target.isEmpty()
                        && !target.equals(origin)
                        && !ARROWS.getOrDefault(origin, Set.of()).contains(target)) {
                    unknown.add(origin + " -> " + target + " (" + from.getSimpleName() + ")");
                }
            }
        }
        assertEquals(Set.of(), unknown);
        assertTrue(HOUSE.size() > 20, "the house was not found");
    }

    private static String room(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith("cuelead.")) {
            return "";
        }
        return name.split("\\.")[1];
    }
}
