package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.FakeSpeakers;
import cuelead.plan.Call;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.time.Beats;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import net.jqwik.api.statistics.Statistics;

/** Whatever was commanded before, calls are those of a practice that was made from scratch for that place. */
class LivePracticeLawTest {
    private static final double LAST_PLACE_SECONDS = 24;
    /** An eight of the dance, in which calls that had begun end and a new piece of the dance is opened. */
    private static final double OPENING_SECONDS = 8 * HumSong.BEAT_SECONDS;

    /** A loop waits for a call to end and for its beat, and what is commanded meanwhile waits for the loop. */
    private static final double SETTLING_SECONDS = 2.1;

    private static Path folder;

    @BeforeContainer
    static void aSong() throws Exception {
        folder = Files.createTempDirectory("cuelead-law");
        HumSong.write(folder);
    }

    @AfterContainer
    static void cleanUp() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** What is commanded, and what that makes of the wish. */
    enum Command {
        NEXT_SECTION,
        PREVIOUS_SECTION,
        NEXT_WALL,
        WALL_AGAIN,
        TOP,
        LOOP,
        LEAVE_LOOP,
        PAUSE_AND_GO_ON,
        COUNT_ONE,
        BEAT_LATER,
        BEAT_EARLIER,
        WALL_BEHIND,
        LONG_LEAD,
        SHORT_LEAD,
        FIGURES,
        SECTIONS,
        FADE,
        ALL_BACK,
        CLICK
    }

    @Provide
    Arbitrary<List<Command>> commands() {
        return Arbitraries.of(Command.class).list().ofMinSize(1).ofMaxSize(8);
    }

    @Property(tries = 30)
    void callsAreThoseOfAPracticeMadeFromScratch(@ForAll("commands") List<Command> commands) throws Exception {
        try (Practice practice = prepare("Intro: 8 counts", CallSettings.withLead(Beats.of(2)))) {
            FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
            LivePractice live = practice.live(speakers);
            CallSettings wished = CallSettings.withLead(Beats.of(2));
            hear(live, speakers, 7);
            for (Command command : commands) {
                obey(live, command);
                wished = wished(wished, command);
                hear(live, speakers, 0.7);
                if (live.heard().songSeconds() > LAST_PLACE_SECONDS) {
                    live.fromTheTop(jump -> {});
                    hear(live, speakers, 0.7);
                }
            }
            live.leaveLoop();
            hear(live, speakers, SETTLING_SECONDS);
            compare(live.heard(), wished);
        }
    }

    private static void compare(Heard heard, CallSettings wished) throws Exception {
        double from = heard.aim().map(DancedCount::songSeconds).orElse(heard.songSeconds()) + OPENING_SECONDS;
        double countOne = heard.timeline().counts().get(0).songSeconds();
        Assume.that(countOne >= HumSong.FIRST_BEAT_SECONDS); // a sheet cannot ask for an earlier one
        try (Practice fresh = prepare(String.format(Locale.ROOT, "Count 1: %.3f", countOne), wished)) {
            List<Call> expected = after(fresh.spokenCalls(), from);
            Statistics.label("something is called")
                    .collect(!expected.isEmpty())
                    .coverage(shares -> shares.check(true).percentage(share -> share > 50));
            assertEquals(expected, after(heard.calls(), from));
        }
    }

    private static Practice prepare(String countOne, CallSettings calls) throws Exception {
        Path sheet = folder.resolve("dance.txt");
        Files.writeString(sheet, HumSong.TWO_SECTIONS.replace("Intro: 8 counts", countOne));
        Wish wish = Wish.of(sheet)
                .song(Optional.of(folder.resolve("hum.wav")))
                .leadBeats(OptionalDouble.of(calls.lead().ticks() / (double) Beats.ONE.ticks()))
                .calls(calls.level(), calls.fading())
                .wish();
        Practice practice = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        practice.await(practice.toFrame());
        return practice;
    }

    private static void hear(LivePractice live, FakeSpeakers speakers, double seconds) {
        for (double passed = 0; passed < seconds; passed += 0.02) {
            speakers.hear(0.02);
            live.tick();
        }
    }

    private static void obey(LivePractice live, Command command) {
        switch (command) {
            case NEXT_SECTION -> live.jumpSections(1, jump -> {});
            case PREVIOUS_SECTION -> live.jumpSections(-1, jump -> {});
            case NEXT_WALL -> live.jumpWalls(1, jump -> {});
            case WALL_AGAIN -> live.jumpWalls(0, jump -> {});
            case TOP -> live.fromTheTop(jump -> {});
            case LOOP -> live.loopSection();
            case LEAVE_LOOP -> live.leaveLoop();
            case PAUSE_AND_GO_ON -> {
                live.pause();
                live.resume();
            }
            case COUNT_ONE -> live.countOneIsNow();
            case BEAT_LATER -> live.moveDance(Beats.ONE);
            case BEAT_EARLIER -> live.moveDance(Beats.ZERO.minus(Beats.ONE));
            case WALL_BEHIND -> live.moveDanceByWall(1, told -> {});
            case CLICK -> live.click(Wish.Click.EVERY_BEAT);
            case LONG_LEAD, SHORT_LEAD, FIGURES, SECTIONS, FADE, ALL_BACK -> live.calls(now -> wished(now, command));
        }
    }

    private static CallSettings wished(CallSettings now, Command command) {
        return switch (command) {
            case LONG_LEAD -> withLead(now, Beats.of(4));
            case SHORT_LEAD -> withLead(now, Beats.ONE);
            case FIGURES -> new CallSettings(now.lead(), now.sectionLead(), CallLevel.FIGURES, now.fading());
            case SECTIONS -> new CallSettings(now.lead(), now.sectionLead(), CallLevel.SECTIONS, now.fading());
            case FADE -> new CallSettings(now.lead(), now.sectionLead(), now.level(), CallSettings.Fading.WALL_BY_WALL);
            case ALL_BACK ->
                new CallSettings(now.lead(), now.sectionLead(), CallLevel.WORDS, CallSettings.Fading.STEADY);
            default -> now;
        };
    }

    private static CallSettings withLead(CallSettings now, Beats lead) {
        CallSettings usual = CallSettings.withLead(lead);
        return new CallSettings(usual.lead(), usual.sectionLead(), now.level(), now.fading());
    }

    private static List<Call> after(List<SpokenCall> calls, double seconds) {
        return calls.stream()
                .map(SpokenCall::call)
                .filter(call -> call.startsSeconds() > seconds)
                .toList();
    }
}
