package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.sound.Speakers;
import cuelead.time.Tempo;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo dance over clicks, with a song that says that it still loads. */
class LivePlayTest {
    private static final Path PROJECT = Path.of("").toAbsolutePath();
    private static final int LOADED_AT_LOOK = 40;
    private static final int QUIT_AT_LOOK = 120;

    @TempDir
    private Path temp;

    private final List<String> told = new ArrayList<>();

    /** Asks for a pause at once, lets the song be loaded some looks later, then ends. */
    private static final class Impatient implements View {
        private final AtomicBoolean isLoaded;
        private final List<Moment> moments = new ArrayList<>();
        private int looks;

        Impatient(AtomicBoolean isLoaded) {
            this.isLoaded = isLoaded;
        }

        @Override
        public void follow(Moment moment) {
            moments.add(moment);
        }

        @Override
        public void tell(String sentence) {
            throw new AssertionError(sentence);
        }

        @Override
        public void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
            speakers.awaitEnd(0);
            looks++;
            if (looks == LOADED_AT_LOOK) {
                isLoaded.set(true);
            }
        }

        @Override
        public boolean isDrawnAtEveryLook() {
            return true;
        }

        private boolean isAsked;

        @Override
        public Optional<Order> order() {
            if (looks == 1 && !isAsked) {
                isAsked = true;
                return Optional.of(Order.PAUSE_OR_GO_ON);
            }
            return looks >= QUIT_AT_LOOK ? Optional.of(Order.QUIT) : Optional.empty();
        }

        @Override
        public void close() {
            // nothing is open
        }
    }

    private static Practice loading(Practice practice, AtomicBoolean isLoaded) {
        return (Practice) Proxy.newProxyInstance(
                Practice.class.getClassLoader(), new Class<?>[] {Practice.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("isSongLoaded")) {
                        return isLoaded.get();
                    }
                    try {
                        return method.invoke(practice, arguments);
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
    }

    /** A key in the first seconds must not hold up what is heard and seen: it waits, and is obeyed when it can be. */
    @Test
    void anOrderWaitsForTheSongAndNothingWaitsForTheOrder() throws Exception {
        Wish wish = Wish.of(PROJECT.resolve("cues/lamp-on-the-quay.txt"))
                .tempo(Optional.of(new Tempo(120)))
                .wish();
        try (Practice practice = Practice.prepare(wish, new Places(temp, PROJECT), (work, done) -> {})) {
            AtomicBoolean isLoaded = new AtomicBoolean();
            Impatient view = new Impatient(isLoaded);
            Stage stage = new Stage() {
                @Override
                public View view(double fromSeconds, KeyHelp keys) {
                    return view;
                }

                @Override
                public void tell(String sentence) {
                    told.add(sentence);
                }

                @Override
                public void tellDelays(CallsGo callsGo, Delays found) {
                    throw new AssertionError("none were sought");
                }
            };
            SpeakerPair speakers = new SpeakerPair(new FakeSpeakers(practice.rate()), Optional.empty());
            new LivePlay(loading(practice, isLoaded), speakers, wish, Delays.NONE, stage).practise();
            Moment early = view.moments.get(LOADED_AT_LOOK / 2);
            assertTrue(early.notice().startsWith("One moment"), early.notice());
            assertEquals(PlayState.Motion.PLAYING, early.state().motion());
            assertTrue(early.heard().songSeconds() > view.moments.get(0).heard().songSeconds(), "it goes on");
            Moment late = view.moments.get(view.moments.size() - 1);
            assertEquals(PlayState.Motion.PAUSED, late.state().motion());
            assertEquals(List.of(), told);
        }
    }
}
