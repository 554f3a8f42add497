package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Refused;
import cuelead.voice.MonoSound;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ReviewerTest {
    private static final double ROUND_TRIP = 0.1;
    private static final List<PlannedCall> PLAN = List.of(
            MatchingTest.planned("together", 1),
            MatchingTest.planned("scuff", 2.2),
            MatchingTest.planned("rock", 3.4),
            MatchingTest.planned("coaster", 4.6),
            MatchingTest.planned("side", 5.8));

    private static Review review(MonoSound take) throws Refused {
        return new Reviewer(SpokenTake.VOICE).review(take, Optional.empty(), PLAN, ROUND_TRIP);
    }

    private static String kinds(Review review) {
        return review.calls().stream().map(call -> call.kind().word()).collect(Collectors.joining(" "));
    }

    @Test
    void wordsAreKnownAndTimed() throws Refused {
        MonoSound take = new SpokenTake(7)
                .say("together", 1.1)
                .say("scuff", 2.32)
                .say("coaster", 4.45)
                .say("side", 5.93)
                .sound();
        Review review = review(take);
        assertEquals("ok ok missed early ok", kinds(review));
        double[] said = {0, 20, -250, 30};
        double[] heard = Review.errors(review.timed());
        for (int i = 0; i < said.length; i++) {
            assertEquals(said[i], heard[i], 30, "call " + i);
        }
    }

    @Test
    void anotherWordAndOneTooMany() throws Refused {
        MonoSound take = new SpokenTake(7)
                .say("together", 1.1)
                .say("monterey", 2.3)
                .say("rock", 3.5)
                .say("coaster", 4.7)
                .say("restart", 5.25)
                .say("side", 5.9)
                .sound();
        Review review = review(take);
        assertEquals("ok wrong ok ok extra ok", kinds(review));
        assertEquals("monterey", review.calls().get(1).heard().orElseThrow().word());
        assertEquals("restart", review.calls().get(4).heard().orElseThrow().word());
    }

    @Test
    void aRoomWithoutAVoiceHoldsNoCalls() throws Refused {
        assertEquals("missed missed missed missed missed", kinds(review(new SpokenTake(7).sound())));
    }
}
