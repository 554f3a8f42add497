package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.dance.Dance;
import cuelead.plan.Call;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.report.Refused;
import cuelead.sheet.SheetReader;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.time.Beats;
import cuelead.time.Tempo;
import cuelead.voice.Pronunciations;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A dance is played before its words are spoken, and is called as if they had been there. */
class LateWordsTest {
    private static final double LOOK_SECONDS = 0.02;
    private static final Set<String> NUMBERS = Set.of("five", "six", "seven", "eight");

    private final Dance dance =
            SheetReader.read("dance", HumSong.TWO_SECTIONS).dance().orElseThrow();
    private final Manner manner = new Manner(
            Ground.overClicks(dance, new Tempo(110), 24, 4),
            CallSettings.withLead(Beats.of(2)),
            Wish.Click.SILENT,
            Levels.EVEN);
    private final Timeline timeline = manner.ground().timeline();

    /** A live practice with a slow voice. */
    private final class Played implements AutoCloseable {
        final SlowVoice voice;
        final FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
        final Take first;
        final LivePractice live;
        private final LateWords late;
        final List<Call> begun = new ArrayList<>();
        int spoken;
        private double passedSeconds;

        Played(SlowVoice voice, Take first, TakeMaker takes, VoiceTimes words) {
            this.voice = voice;
            this.first = first;
            WordDoubts doubts = new WordDoubts("dance", Pronunciations.NONE);
            late = new LateWords(words, new Speaking(voice, () -> {}), doubts, () -> spoken++);
            Outputs outputs = Outputs.ofPractice(speakers, Optional.empty(), Delays.NONE, HumSong.RATE);
            live = new LivePractice(
                    takes, manner, first, outputs, new CatchingUp(late, new Settling(Optional::empty, Levels.EVEN)));
        }

        void hear(double seconds) {
            for (double passed = 0; passed < seconds; passed += LOOK_SECONDS) {
                speakers.hear(LOOK_SECONDS);
                live.tick();
                Heard heard = live.heard();
                heard.calls().stream()
                        .map(SpokenCall::call)
                        .filter(call -> call.startsSeconds() > passedSeconds)
                        .filter(call -> call.startsSeconds() <= heard.songSeconds())
                        .forEach(begun::add);
                passedSeconds = heard.songSeconds();
            }
        }

        /** Time stands still until all has been spoken and ordered. */
        void awaitWords() {
            while (spoken == 0) {
                live.tick();
                Thread.onSpinWait();
                if (spoken == 0 && late.areAllThereFor(first)) {
                    hear(LOOK_SECONDS); // what is ordered comes with the next that is heard
                }
            }
        }

        @Override
        public void close() {
            voice.answer();
            late.close();
        }
    }

    private static SlowVoice slow(Predicate<String> atHand) {
        return new SlowVoice(HumSong.RATE, atHand, Set.of());
    }

    private Played play(SlowVoice voice, double fromSeconds) {
        VoiceTimes words = VoiceTimes.atHand(voice, HumSong.RATE);
        TakeMaker takes = new TakeMaker(words, new MixMaker(HumSong.RATE, Optional.empty()));
        return new Played(voice, new FirstTake(takes, words).make(timeline, manner, fromSeconds), takes, words);
    }

    /** What it would be had the words been kept. */
    private Take kept(SlowVoice voice) {
        voice.answer();
        TakeMaker takes = new TakeMaker(VoiceTimes.spoken(voice), new MixMaker(HumSong.RATE, Optional.empty()));
        return takes.make(timeline, Extent.whole(timeline), manner);
    }

    private static List<Call> calls(List<SpokenCall> spoken) {
        return spoken.stream().map(SpokenCall::call).toList();
    }

    @Test
    void itBeginsBeforeAnyWordIsSpokenAndIsThenThePracticeThatItWouldHaveBeen() {
        Take kept = kept(slow(words -> true));
        try (Played played = play(slow(words -> false), 0)) {
            assertEquals(Set.of(), played.voice.asked());
            played.hear(2);
            assertEquals(List.of(), played.live.heard().calls());
            played.voice.answer();
            played.awaitWords();
            played.hear(1);
            assertEquals(calls(kept.calls()), calls(played.live.heard().calls()));
            played.hear(20);
            float[] heard = played.speakers.heard();
            float[] expected = new float[heard.length];
            new Mix(kept.mix()).read(expected, expected.length / 2);
            assertArrayEquals(expected, heard, 1e-6f);
            assertEquals(1, played.spoken);
        }
    }

    @Test
    void whatIsHeardSoonIsWaitedForAndNothingElse() {
        SlowVoice voice = slow(words -> false);
        voice.answer();
        double opening = kept(slow(words -> true)).plan().calls().get(0).startsSeconds();
        try (Played played = play(voice, opening - 1)) {
            assertFalse(voice.asked().isEmpty());
            Set<String> later = new HashSet<>();
            for (Call call : played.first.plan().calls()) {
                boolean isSoon = call.startsSeconds() >= opening - 1 && call.startsSeconds() < opening + 3;
                assertTrue(!isSoon || voice.asked().contains(call.words()), call.words());
                later.add(call.words());
            }
            later.removeAll(voice.asked());
            assertFalse(later.isEmpty(), "some words are left for later");
        }
    }

    @Test
    void nothingWaitsWhereEveryWordIsAtHand() {
        try (Played played = play(slow(words -> true), 0)) {
            assertEquals(Set.of(), played.first.guessed());
            played.hear(1);
            assertEquals(1, played.live.heard().version());
            assertEquals(1, played.spoken);
        }
    }

    /** Whenever the words come, and whatever was known before. */
    @Property(tries = 60)
    void nothingIsCalledTwiceAndWhatComesLaterIsCalledAsEver(
            @ForAll @IntRange(max = 1_400) int spokenAfterLooks, @ForAll @IntRange(max = 7) int known) {
        Take kept = kept(slow(words -> true));
        Predicate<String> atHand = words -> NUMBERS.contains(words) || Math.floorMod(words.hashCode(), 8) < known;
        try (Played played = play(slow(atHand), 0)) {
            played.hear(spokenAfterLooks * LOOK_SECONDS);
            played.voice.answer();
            played.awaitWords();
            double swapped = played.live.heard().songSeconds() + 1.5;
            played.hear(50);
            List<List<Object>> aims = new ArrayList<>();
            for (Call call : played.begun) {
                aims.add(List.of(call.kind(), call.beatSeconds(), call.count(), call.words()));
            }
            assertEquals(new HashSet<>(aims).size(), aims.size(), aims.toString());
            assertEquals(told(after(calls(kept.calls()), swapped)), told(after(played.begun, swapped)));
        }
    }

    private static List<String> told(List<Call> calls) {
        return calls.stream()
                .map(call -> String.format(Locale.ROOT, "%.3f %s", call.startsSeconds(), call.words()))
                .toList();
    }

    private static List<Call> after(List<Call> calls, double seconds) {
        return calls.stream().filter(call -> call.startsSeconds() > seconds).toList();
    }

    @Test
    void anOrderBeforeTheWordsAreThereIsObeyedAndThenCalledAsEver() {
        try (Played played = play(slow(NUMBERS::contains), 0)) {
            played.hear(2);
            played.live.calls(now ->
                    new CallSettings(now.lead(), now.sectionLead(), CallLevel.FIGURES, CallSettings.Fading.STEADY));
            played.live.moveDance(Beats.ONE);
            played.hear(1);
            double countOne = played.live.heard().timeline().counts().get(0).songSeconds();
            assertEquals(timeline.counts().get(0).songSeconds() + 60 / 110.0, countOne, 1e-6);
            played.voice.answer();
            played.awaitWords();
            played.hear(1);
            Manner wished = new Manner(
                    manner.ground().movedBy(Beats.ONE),
                    new CallSettings(
                            manner.calls().lead(),
                            manner.calls().sectionLead(),
                            CallLevel.FIGURES,
                            CallSettings.Fading.STEADY),
                    manner.click(),
                    manner.levels());
            Timeline moved = wished.ground().timeline();
            TakeMaker takes =
                    new TakeMaker(VoiceTimes.spoken(slow(words -> true)), new MixMaker(HumSong.RATE, Optional.empty()));
            Take expected = takes.make(moved, Extent.whole(moved), wished);
            assertEquals(calls(expected.calls()), calls(played.live.heard().calls()));
        }
    }

    @Test
    void inAPauseTheyComeToo() {
        Take kept = kept(slow(words -> true));
        try (Played played = play(slow(words -> false), 0)) {
            played.hear(2);
            played.live.pause();
            played.voice.answer();
            played.awaitWords();
            assertTrue(played.live.isPaused());
            played.live.resume();
            played.hear(1);
            assertEquals(calls(kept.calls()), calls(played.live.heard().calls()));
        }
    }

    @Test
    void aPieceEndsWhereItWasToEnd() {
        SlowVoice voice = slow(words -> false);
        VoiceTimes words = VoiceTimes.atHand(voice, HumSong.RATE);
        TakeMaker takes = new TakeMaker(words, new MixMaker(HumSong.RATE, Optional.empty()));
        Take whole = new FirstTake(takes, words).make(timeline, manner, 0);
        Take piece = whole.with(whole.mix().between(0, HumSong.RATE.frameAt(5)));
        try (Played played = new Played(voice, piece, takes, words)) {
            played.hear(1);
            played.voice.answer();
            played.awaitWords();
            played.hear(6);
            assertTrue(played.live.hasEnded());
            assertEquals(5, played.speakers.heardSeconds(), 0.001);
        }
    }

    @Test
    void aVoiceThatCannotBeUsedIsTold() {
        try (Played played = play(slow(words -> false), 0)) {
            played.hear(1);
            played.voice.refuse("No voice is there.");
            while (true) {
                played.live.tick();
                try {
                    played.live.check();
                } catch (Refused told) {
                    assertEquals("No voice is there.", told.getMessage());
                    return;
                }
            }
        }
    }

    @Test
    void wordsThatTheVoiceTurnsOutNotToSayAreInThePlanAsSuch() {
        SlowVoice voice = new SlowVoice(HumSong.RATE, words -> false, Set.of("kick"));
        VoiceTimes words = VoiceTimes.atHand(voice, HumSong.RATE);
        TakeMaker takes = new TakeMaker(words, new MixMaker(HumSong.RATE, Optional.empty()));
        Take guessed = takes.make(timeline, Extent.whole(timeline), manner);
        assertEquals(Set.of(), guessed.plan().unspeakable());
        voice.answer();
        Take spoken = takes.makeSpoken(timeline, Extent.whole(timeline), manner);
        assertEquals(Set.of("kick"), spoken.plan().unspeakable());
        assertThrows(Exception.class, () -> words.clip("kick"));
    }
}
