package cuelead.plan;

import cuelead.dance.Counts;
import cuelead.english.NumberWords;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Everything that could be called for a timeline at its levels: announcements, walls, sections, and what
 * {@link CountCues} finds for each count. Which of it fits is decided elsewhere.
 */
final class Cues {
    /** A wall, a restart or a tag is called this much before its first section. */
    static final Beats BETWEEN_CHANGES = Beats.of(2);

    /** A title, such as "sections one to four", takes about two beats and a breath. */
    private static final Beats FOR_TITLE = Beats.of(2);

    static final double ROUNDING_SECONDS = 1e-6;

    private final Timeline timeline;
    private final Extent extent;
    private final Optional<DancedCount> first;
    private final CallSettings settings;
    private final List<Cue> cues = new ArrayList<>();
    private final List<LeftOut> silenced = new ArrayList<>();

    Cues(Timeline timeline, Extent extent, CallSettings settings) {
        this.timeline = timeline;
        this.extent = extent;
        first = extent.first(timeline);
        this.settings = settings;
        addTitle();
        List<Run> runs = timeline.runs();
        for (int i = 0; i < runs.size(); i++) {
            addRun(runs.get(i), i + 1 < runs.size() ? Optional.of(runs.get(i + 1)) : Optional.empty());
        }
    }

    List<Cue> all() {
        return cues;
    }

    /** Counts for which the sheet asks for silence. */
    List<LeftOut> silenced() {
        return silenced;
    }

    /** Right before the first figure: a run-up may be short. */
    private void addTitle() {
        if (extent.title().isPresent() && first.isPresent()) {
            List<Phrase> title = Phrase.needed(List.of(extent.title().get().words()));
            Beats lead = sectionLead(first.get());
            lead = isFigureNamedToo(first.get()) ? lead.plus(Beats.HALF) : lead;
            cues.add(new Cue(Kind.CHANGE, Need.WALL, first.get(), title, lead));
        }
    }

    /** In a short run-up there is time for the title or for the first figure. */
    private boolean isFigureNamedToo(DancedCount count) {
        if (extent.title().isEmpty() || !isOpening(count)) {
            return true;
        }
        BeatPosition title = count.at().minus(sectionLead(count).plus(FOR_TITLE));
        return timeline.grid().secondsAt(title) >= extent.earliestSeconds() - ROUNDING_SECONDS;
    }

    private void addRun(Run run, Optional<Run> next) {
        CallLevel level = settings.levelOf(run.wall());
        List<DancedCount> counts = timeline.countsOf(run);
        List<DancedCount> called = counts.stream().filter(extent::contains).toList();
        if (level == CallLevel.NONE || called.isEmpty()) {
            return;
        }
        DancedCount start = firstWhole(counts);
        boolean isTitled = extent.title().isPresent() && isOpening(start);
        boolean isNamed = timeline.dance().isPhrased() || !extent.isToldByTitle();
        if (run.isWall() && extent.contains(start) && !isTitled && isNamed) {
            cues.add(new Cue(Kind.CHANGE, Need.WALL, start, wallPhrases(run, level), wallLead(start)));
        }
        next.ifPresent(after -> announceChange(run, after));
        called.stream().filter(DancedCount::beginsBridge).forEach(this::announceBridge);
        if (level == CallLevel.CHANGES) {
            return;
        }
        for (DancedCount count : called) {
            boolean opensSection = count.isFirstOfSection() && isFigureNamedToo(count);
            if (opensSection) {
                addSection(count);
            }
            if (level != CallLevel.SECTIONS) {
                cueOf(count, level, opensSection).ifPresentOrElse(cues::add, () -> noteSilence(count));
            }
        }
    }

    /** The call of a count, as far as the call of its section does not tell it. */
    private Optional<Cue> cueOf(DancedCount count, CallLevel level, boolean opensSection) {
        if (!opensSection) {
            return CountCues.of(count, level, settings.lead());
        }
        if (CountCues.hasOwnWords(count) && !isOpening(count)) { // the section is called by them
            return Optional.empty();
        }
        return CountCues.hasTurnToldWithSection(count, level)
                ? CountCues.plain(count, level, settings.lead())
                : CountCues.of(count, level, settings.lead());
    }

    private void noteSilence(DancedCount count) {
        if (CountCues.isSilenced(count)) {
            silenced.add(new LeftOut(
                    "-",
                    count.run().wall(),
                    count.section().name(),
                    count.count().label(),
                    LeftOut.Reason.SILENT_ON_SHEET));
        }
    }

    private static DancedCount firstWhole(List<DancedCount> counts) {
        return counts.stream().filter(c -> c.count().isWhole()).findFirst().orElse(counts.get(0));
    }

    private Beats wallLead(DancedCount start) {
        return sectionLead(start).plus(BETWEEN_CHANGES);
    }

    /** Sections are called their lead ahead; the very first is called before the count-in. */
    private Beats sectionLead(DancedCount count) {
        if (!isOpening(count)) {
            return leadInFlow(count);
        }
        Counts countIn = CountIn.reserved(timeline, count, extent.earliestSeconds(), settings);
        Beats beforeCountIn = timeline.beatsOf(countIn).plus(BETWEEN_CHANGES);
        BeatPosition wanted = count.at().minus(settings.sectionLead());
        if (timeline.grid().secondsAt(wanted) < extent.earliestSeconds()) {
            return beforeCountIn;
        }
        return beforeCountIn.compareTo(settings.sectionLead()) > 0 ? beforeCountIn : settings.sectionLead();
    }

    /**
     * Where every word is called, a section is named in place of its first count's word; else there is time to name it
     * earlier.
     */
    private Beats leadInFlow(DancedCount count) {
        return settings.levelOf(count.run().wall()) == CallLevel.WORDS ? settings.lead() : settings.sectionLead();
    }

    /** With the way faced, where that does not take the time of the words; of a phrased dance the part. */
    private List<Phrase> wallPhrases(Run run, CallLevel level) {
        String wall = timeline.dance().isPhrased()
                ? "part " + run.part().name().toLowerCase(Locale.ROOT)
                : "wall " + NumberWords.cardinal(run.wall());
        String facing = TurnWords.wall(run.startFacing());
        return facing.isEmpty() || run.wall() == 1 || level == CallLevel.WORDS
                ? Phrase.needed(List.of(wall))
                : Phrase.needed(List.of(wall + " " + facing, wall));
    }

    /** A restart, a tag or the ending: told early in its wall, and again before it comes. */
    private void announceChange(Run run, Run next) {
        List<DancedCount> after = timeline.countsOf(next);
        if (after.isEmpty()) {
            return;
        }
        DancedCount target = firstWhole(after);
        if (!extent.contains(target)) {
            return;
        }
        boolean isShort = run.counts() <= timeline.dance().header().metre().countsInSection();
        if (run.restart().isPresent()) {
            String early = "restart after " + NumberWords.cardinal(run.counts());
            announce(target, isShort ? List.of() : List.of(early, "restart this wall", "restart"), "restart");
        }
        if (next.isEnding()) {
            String early = "ending after " + NumberWords.cardinal(run.counts());
            announce(target, isShort ? List.of() : List.of(early, "ending this wall", "ending"), "ending");
        }
        if (next.isTag() && run.isWall()) {
            announce(target, isShort ? List.of() : List.of("tag after this wall", "tag this wall", "tag"), "tag");
        }
    }

    private void announceBridge(DancedCount target) {
        int after = target.countInRun() - 1;
        announce(target, List.of("tag after " + NumberWords.cardinal(after), "tag this wall", "tag"), "tag");
    }

    /** In a wall that is too short for a warning there is none. */
    private void announce(DancedCount target, List<String> early, String again) {
        Beats lead = wallLead(target);
        if (!extent.isToldByTitle() && !early.isEmpty()) {
            cues.add(new Cue(Kind.CHANGE, Need.EARLY_WARNING, target, Phrase.needed(early), lead));
        }
        cues.add(new Cue(Kind.CHANGE, Need.ANNOUNCEMENT, target, Phrase.needed(List.of(again)), lead));
    }

    /** A new section by its first figure, in the last counts of the one before. */
    private void addSection(DancedCount count) {
        boolean isAmongWords = settings.levelOf(count.run().wall()) == CallLevel.WORDS && !isOpening(count);
        List<Phrase> heads = isAmongWords ? CountCues.shortSectionHeadsOf(count) : CountCues.sectionHeadsOf(count);
        if (!heads.isEmpty()) {
            cues.add(new Cue(Kind.SECTION, Need.SECTION, count, heads, sectionLead(count)));
        }
    }

    private boolean isOpening(DancedCount count) {
        return first.isPresent() && count.at().equals(first.get().at());
    }
}
