package cuelead.steer;

import cuelead.sound.Speakers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Notices devices that go and come back, says each once, and counts. Used on one thread. */
public final class LostDevices {
    private static final String EAR = "The calls' device";

    private final SpeakerPair speakers;
    private final String main;
    private boolean isMainLost;
    private boolean isEarLost;
    private int mainLosses;
    private int earLosses;

    public LostDevices(SpeakerPair speakers) {
        this.speakers = speakers;
        main = speakers.ear().isPresent() ? "The music's device" : "The sound device";
    }

    /** A sentence for each change since the last time. */
    public List<String> news() {
        List<String> news = new ArrayList<>();
        boolean wasMainLost = isMainLost;
        boolean wasEarLost = isEarLost;
        isMainLost = speakers.main().isDeviceLost();
        isEarLost = speakers.ear().map(Speakers::isDeviceLost).orElse(false);
        if (isMainLost != wasMainLost) {
            mainLosses += isMainLost ? 1 : 0;
            news.add(isMainLost ? mainIsGone() : main + " is back.");
        }
        if (isEarLost != wasEarLost) {
            earLosses += isEarLost ? 1 : 0;
            news.add(isEarLost ? earIsGone() : EAR + " is back.");
        }
        return news;
    }

    private String mainIsGone() {
        return main
                + (speakers.ear().isPresent() && !isEarLost
                        ? " is gone; the calls go on, and the music joins in again."
                        : " is gone; the practice goes on when one is connected.");
    }

    private String earIsGone() {
        return EAR
                + (isMainLost
                        ? " is gone; the practice goes on when one is connected."
                        : " is gone; the music goes on, and the calls join in again.");
    }

    /** What is missing, as long as it is; empty when nothing is. */
    public String missing() {
        if (isMainLost && isEarLost) {
            return "Both sound devices are gone; the practice goes on when one is connected.";
        }
        return isMainLost ? mainIsGone() : isEarLost ? earIsGone() : "";
    }

    /** How the practice goes on, from how it would with all devices. */
    public PlayState.Motion motion(PlayState.Motion ordered) {
        if (isMainLost && (isEarLost || speakers.ear().isEmpty())) {
            return PlayState.Motion.NO_DEVICE;
        }
        if (ordered != PlayState.Motion.PLAYING) {
            return ordered;
        }
        return isMainLost ? PlayState.Motion.NO_MUSIC : isEarLost ? PlayState.Motion.NO_CALLS : ordered;
    }

    /** How often a device was lost, a sentence each; none for one that never was. */
    public List<String> account() {
        List<String> account = new ArrayList<>();
        account(main, mainLosses).ifPresent(account::add);
        account(EAR, earLosses).ifPresent(account::add);
        return account;
    }

    private static Optional<String> account(String device, int losses) {
        return losses == 0 ? Optional.empty() : Optional.of(device + " was gone " + Told.number(losses, "time") + ".");
    }
}
