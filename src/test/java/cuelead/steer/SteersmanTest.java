package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.practice.CallsGo;
import cuelead.practice.Heard;
import cuelead.practice.LivePractice;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.time.Beats;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders given to the demo dance, practised to clicks: what is heard some looks later. */
class SteersmanTest {
    /** At 40 ms a look, so that an order is obeyed and heard. */
    private static final int LOOKS = 60;

    private static final Path PROJECT = Path.of("").toAbsolutePath();
    private static final Path DEMO_SHEET = PROJECT.resolve("cues/lamp-on-the-quay.txt");

    @TempDir
    static Path temp;

    private Practice practice;
    private FakeSpeakers speakers;
    private LivePractice live;
    private Steersman steersman;

    @BeforeEach
    void play() throws Exception {
        Wish wish = Wish.of(DEMO_SHEET)
                .tempo(Optional.of(new cuelead.time.Tempo(120)))
                .wish();
        practice = Practice.prepare(wish, new Places(temp, PROJECT), (work, done) -> {});
        speakers = new FakeSpeakers(practice.rate());
        live = practice.live(speakers);
        steersman = new Steersman(live, wish);
    }

    @AfterEach
    void close() {
        practice.close();
    }

    private Heard after(Order... orders) throws InterruptedException {
        for (Order order : orders) {
            steersman.obey(order);
            for (int look = 0; look < LOOKS; look++) {
                speakers.awaitEnd(0);
                live.tick();
            }
        }
        return live.heard();
    }

    @Test
    void jumpsLeadToSectionsAndWalls() throws Exception {
        DancedCount aim = after(Order.NEXT_WALL).aim().orElseThrow();
        assertEquals("2 S1", aim.run().wall() + " " + aim.section().name());
        aim = after(Order.NEXT_SECTION).aim().orElseThrow();
        assertEquals("2 S2", aim.run().wall() + " " + aim.section().name());
        aim = after(Order.PREVIOUS_SECTION, Order.PREVIOUS_SECTION).aim().orElseThrow();
        assertEquals("1 S4", aim.run().wall() + " " + aim.section().name());
        aim = after(Order.FROM_THE_TOP).aim().orElseThrow();
        assertEquals("1 S1", aim.run().wall() + " " + aim.section().name());
    }

    @Test
    void aSectionIsRepeatedUntilItIsLeft() throws Exception {
        assertEquals(
                Heard.Repeating.A_SECTION,
                after(Order.NEXT_SECTION, Order.REPEAT_SECTION).repeating());
        assertEquals(Heard.Repeating.NOTHING, after(Order.REPEAT_SECTION).repeating());
        assertEquals(Heard.Repeating.A_SECTION, after(Order.REPEAT_SECTION).repeating());
        assertEquals(Heard.Repeating.NOTHING, after(Order.NEXT_WALL).repeating());
        assertEquals(Heard.Repeating.A_SECTION, after(Order.REPEAT_SECTION).repeating());
    }

    @Test
    void theSpeedIsShownAsLongAsItIsNotTheSongsOwn() {
        assertEquals(Optional.empty(), steersman.state().pace().orElseThrow().told());
        String said = steersman.obey(Order.SLOWER);
        String shown = steersman.state().pace().orElseThrow().told().orElseThrow();
        assertEquals("speed 0.95 (114 beats a minute)", shown);
        assertEquals("Speed 0.95 (114 beats a minute).", said);
        assertEquals("The song's own speed.", steersman.obey(Order.FASTER));
    }

    @Test
    void anyTempoIsHeldWithinWhatTheSongCanHave() {
        assertEquals("Speed 0.8 (96 beats a minute).", steersman.obey(new Ask.AtTempo(new Tempo(96))));
        assertEquals("It is at that tempo already.", steersman.obey(new Ask.AtTempo(new Tempo(96))));
        steersman.obey(new Ask.AtTempo(new Tempo(20)));
        assertEquals(Speed.SLOWEST, steersman.state().pace().orElseThrow().speed());
        steersman.obey(new Ask.AtTempo(new Tempo(300)));
        assertEquals(Speed.FASTEST, steersman.state().pace().orElseThrow().speed());
        assertEquals("The song's own speed.", steersman.obey(new Ask.AtTempo(new Tempo(120))));
        assertEquals("", steersman.obey(new Ask.ToPass(1)));
    }

    @Test
    void callsAreChosenAnew() throws Exception {
        assertEquals(Beats.ofDecimal(2.5), after(Order.LONGER_LEAD).settings().lead());
        assertEquals(
                Beats.ofDecimal(1.5),
                after(Order.SHORTER_LEAD, Order.SHORTER_LEAD).settings().lead());
        assertEquals(
                CallLevel.SECTIONS,
                after(Order.FEWER_CALLS, Order.FEWER_CALLS).settings().level());
        assertEquals(CallLevel.FIGURES, after(Order.MORE_CALLS).settings().level());
        assertEquals(
                CallSettings.Fading.WALL_BY_WALL, after(Order.FADE).settings().fading());
        CallSettings all = after(Order.ALL_CALLS_BACK).settings();
        assertEquals(CallLevel.WORDS, all.level());
        assertEquals(CallSettings.Fading.STEADY, all.fading());
        assertEquals(
                CallSettings.Fading.WALL_BY_WALL, after(Order.FADE).settings().fading());
    }

    @Test
    void limitsHold() {
        for (int i = 0; i < 40; i++) {
            steersman.obey(Order.LESS_DIP);
            steersman.obey(Order.LOUDER_VOICE);
            steersman.obey(Order.SHORTER_LEAD);
            steersman.obey(Order.FEWER_CALLS);
            live.tick();
        }
        assertEquals(0, steersman.state().dip().db());
        assertEquals(6, steersman.state().voiceDb());
        assertEquals("The voice cannot be louder.", steersman.obey(Order.LOUDER_VOICE));
    }

    @Test
    void limitsAreSaid() {
        assertEquals("Every word is called already.", steersman.obey(Order.MORE_CALLS));
        assertEquals("The display cannot come sooner: --delay 0.", steersman.obey(Order.SOONER));
        for (int i = 0; i < 40; i++) {
            steersman.obey(Order.SHORTER_LEAD);
            steersman.obey(Order.FEWER_CALLS);
            steersman.obey(Order.MORE_DIP);
        }
        assertEquals("Calls come half a beat ahead already.", steersman.obey(Order.SHORTER_LEAD));
        assertEquals("Nothing is called already.", steersman.obey(Order.FEWER_CALLS));
        assertEquals("The music goes down by 24 dB under the calls already.", steersman.obey(Order.MORE_DIP));
        for (int i = 0; i < 40; i++) {
            steersman.obey(Order.LONGER_LEAD);
        }
        assertEquals("Calls come 16 beats ahead already.", steersman.obey(Order.LONGER_LEAD));
    }

    @Test
    void whatWasOrderedIsShownAtOnce() {
        steersman.obey(Order.LONGER_LEAD);
        steersman.obey(Order.FEWER_CALLS);
        steersman.obey(Order.REPEAT_SECTION);
        PlayState state = steersman.state();
        assertEquals(Beats.ofDecimal(2.5), state.calls().lead());
        assertEquals(CallLevel.FIGURES, state.calls().level());
        assertEquals(Heard.Repeating.A_SECTION, state.repeating());
    }

    @Test
    void jumpsAreSaidAsTheyAre() throws Exception {
        assertEquals("From the beginning of the song.", steersman.obey(Order.FROM_THE_TOP));
        after(Order.NEXT_WALL, Order.NEXT_WALL, Order.NEXT_WALL);
        assertEquals("From the top: count 1 after its run-up.", steersman.obey(Order.FROM_THE_TOP));
        after(Order.NEXT_WALL, Order.NEXT_WALL, Order.NEXT_WALL, Order.WALL_AGAIN);
        assertEquals("This is the last wall.", steersman.obey(Order.NEXT_WALL));
        assertEquals(
                "4 S1",
                live.heard()
                        .aim()
                        .map(aim -> aim.run().wall() + " " + aim.section().name())
                        .orElseThrow());
    }

    @Test
    void realignmentsAreTakenBack() throws Exception {
        long before = live.heard().timeline().countOne().ticks();
        assertEquals("Count 1 is now. (u takes it back)", steersman.obey(Order.COUNT_ONE_IS_NOW));
        after(Order.EIGHT_LATER);
        assertEquals("The dance lies as before.", steersman.obey(Order.TAKE_REALIGNMENT_BACK));
        after(Order.CLICK);
        assertEquals("The dance lies as the sheet says.", steersman.obey(Order.TAKE_REALIGNMENT_BACK));
        after(Order.CLICK);
        assertEquals(before, live.heard().timeline().countOne().ticks());
        assertEquals("The dance lies as the sheet says already.", steersman.obey(Order.TAKE_REALIGNMENT_BACK));
    }

    /** Four walls are danced to clicks: a wall later four times would leave none. */
    @Test
    void aWallLaterIsRefusedWhereNoWallWouldBeLeft() throws Exception {
        String said = "";
        for (int i = 0; i < 9 && !said.startsWith("No wall"); i++) {
            said = steersman.obey(Order.WALL_LATER);
            after(Order.CLICK);
        }
        assertEquals("No wall would be left before the music ends.", said);
        assertFalse(live.heard().timeline().counts().isEmpty());
        assertTrue(steersman.obey(Order.WALL_EARLIER).startsWith("The dance is a wall earlier."));
    }

    @Test
    void clicksHaveAnEndOfTheirOwn() {
        double end = live.heard().timeline().endSeconds();
        assertTrue(end < 300, "at " + end);
        assertEquals(practice.rate().secondsAt(practice.toFrame()), end, 1);
    }

    @Test
    void theDanceMovesAgainstTheMusic() throws Exception {
        long before = live.heard().timeline().countOne().ticks();
        assertEquals(
                Beats.ONE.ticks(), after(Order.BEAT_LATER).timeline().countOne().ticks() - before);
        assertEquals(
                Beats.of(9).ticks(),
                after(Order.EIGHT_LATER).timeline().countOne().ticks() - before);
        assertEquals(
                0,
                after(Order.EIGHT_EARLIER, Order.BEAT_EARLIER)
                                .timeline()
                                .countOne()
                                .ticks()
                        - before);
        Heard now = after(Order.COUNT_ONE_IS_NOW);
        double start = now.timeline().grid().secondsAt(now.timeline().countOne());
        assertTrue(start < now.songSeconds() && now.songSeconds() - start < 3.5, "count 1 at " + start);
    }

    @Test
    void callsGoFromSideToSideAndTheDipWithThem() throws Exception {
        assertEquals("Calls on the left, music on the right.", steersman.obey(Order.OTHER_SIDE));
        assertEquals(CallsGo.LEFT, steersman.state().callsGo());
        assertEquals(0, steersman.state().dip().db());
        after(Order.MORE_DIP);
        int from = speakers.heard().length;
        after(Order.OTHER_SIDE);
        assertEquals(CallsGo.RIGHT, steersman.state().callsGo());
        float[] heard = speakers.heard();
        float left = 0;
        float right = 0;
        for (int i = heard.length - (heard.length - from) / 2 & ~1; i < heard.length; i += 2) {
            left = Math.max(left, Math.abs(heard[i]));
            right = Math.max(right, Math.abs(heard[i + 1]));
        }
        assertEquals(0, left, "clicks go with the calls");
        assertTrue(right > 0.05, "at " + right);
        after(Order.OTHER_SIDE);
        assertEquals(CallsGo.WITH_THE_MUSIC, steersman.state().callsGo());
        assertEquals(10, steersman.state().dip().db());
        after(Order.OTHER_SIDE);
        assertEquals(2, steersman.state().dip().db());
    }

    @Test
    void theDisplayIsMovedToLateSpeakers() throws Exception {
        double before = live.heard().songSeconds();
        assertEquals("The display comes later: --delay 10.", steersman.obey(Order.LATER));
        after(Order.LATER, Order.LATER, Order.SOONER);
        assertEquals(0.02, live.delays().musicSeconds(), 1e-9);
        assertEquals(3 * LOOKS * 0.04 - 0.02, live.heard().songSeconds() - before, 1e-3);
    }

    @Test
    void callsInTheEarAreMoved() {
        Steersman other = new Steersman(live, apart());
        assertEquals("The calls in your ear come sooner: --ear-delay 5.", other.obey(Order.SOONER));
        other.obey(Order.LATER);
        assertEquals("The calls in your ear come later: --delay 5.", other.obey(Order.LATER));
        assertEquals("The calls in your ear come sooner: --ear-delay 0.", other.obey(Order.SOONER));
        assertEquals("The calls have a device of their own.", other.obey(Order.OTHER_SIDE));
        assertEquals(CallsGo.APART, other.state().callsGo());
    }

    private static Wish apart() {
        return Wish.of(DEMO_SHEET).callsGo(CallsGo.APART).wish();
    }

    @Test
    void pauseAndClickAreTold() throws Exception {
        after(Order.PAUSE_OR_GO_ON);
        assertEquals(PlayState.Motion.PAUSED, steersman.state().motion());
        after(Order.PAUSE_OR_GO_ON, Order.CLICK);
        assertEquals(PlayState.Motion.PLAYING, steersman.state().motion());
        assertEquals(Wish.Click.EVERY_BEAT, steersman.state().click());
    }
}
