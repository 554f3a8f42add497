package cuelead.steer;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * Speakers that are opened beside other work: finding the device takes a while, and one that was idle swallows what
 * is played in its first moments. While they are being opened, standard error may lead nowhere.
 */
public final class SpeakerOpening implements AutoCloseable {
    private static final SampleRate USUAL_RATE = new SampleRate(44_100);

    private final SpeakerSource devices;
    private final DeviceChoice choice;
    private final SampleRate firstRate;
    private final CompletableFuture<Outcome> first = new CompletableFuture<>();
    private Optional<SpeakerPair> opened = Optional.empty();

    private record Outcome(Optional<SpeakerPair> speakers, Optional<Refused> refusal) {}

    private SpeakerOpening(SpeakerSource devices, DeviceChoice choice, SampleRate firstRate) {
        this.devices = devices;
        this.choice = choice;
        this.firstRate = firstRate;
    }

    /** Begins at the rate asked for, or else at the usual one of songs. */
    public static SpeakerOpening begin(SpeakerSource devices, DeviceChoice choice, Optional<SampleRate> rate) {
        SpeakerOpening opening = new SpeakerOpening(devices, choice, rate.orElse(USUAL_RATE));
        Thread thread = new Thread(opening::open, "cuelead-open-speakers");
        thread.setDaemon(true);
        thread.start();
        return opening;
    }

    private void open() {
        try {
            first.complete(new Outcome(Optional.of(choice.open(devices, firstRate)), Optional.empty()));
        } catch (Refused none) {
            first.complete(new Outcome(Optional.empty(), Optional.of(none)));
        } catch (RuntimeException | Error mistake) {
            first.completeExceptionally(mistake);
        }
    }

    /**
     * The speakers, opened anew where they are wanted at another rate. They are closed with this.
     *
     * @throws Refused when there are none
     */
    public SpeakerPair at(SampleRate rate) throws Refused {
        Outcome outcome = first.join();
        if (outcome.refusal().isPresent()) {
            throw outcome.refusal().get();
        }
        opened = outcome.speakers();
        if (!rate.equals(firstRate)) {
            opened.orElseThrow().close();
            opened = Optional.empty();
            opened = Optional.of(choice.open(devices, rate));
        }
        return opened.orElseThrow();
    }

    @Override
    public void close() {
        try {
            Outcome outcome = first.join();
            opened.or(outcome::speakers).ifPresent(SpeakerPair::close);
        } catch (CompletionException toldAlready) {
            // whoever asked for the speakers was told
        }
    }
}
