package cuelead.cli;

import cuelead.sound.Speakers;
import java.util.ArrayList;
import java.util.List;

/** Notices devices that go and come back, and says it once. Used on one thread. */
final class LostDevices {
    private final SpeakerPair speakers;
    private boolean isMainLost;
    private boolean isEarLost;

    LostDevices(SpeakerPair speakers) {
        this.speakers = speakers;
    }

    /** A sentence for each change since the last time. */
    List<String> news() {
        List<String> news = new ArrayList<>();
        boolean wasMainLost = isMainLost;
        boolean wasEarLost = isEarLost;
        isMainLost = speakers.main().isDeviceLost();
        isEarLost = speakers.ear().map(Speakers::isDeviceLost).orElse(false);
        if (isMainLost && !wasMainLost) {
            news.add(mainIsGone());
        }
        if (isEarLost != wasEarLost) {
            news.add(
                    isEarLost
                            ? "The calls' device is gone; the music goes on, and the calls join in again when it is back."
                            : "The calls' device is back.");
        }
        return news;
    }

    private String mainIsGone() {
        return speakers.ear().isPresent()
                ? "The music's device is gone; the calls go on, and the music from where it was when it is back."
                : "The sound device is gone; the practice goes on when one is connected.";
    }

    boolean isMainLost() {
        return isMainLost;
    }
}
