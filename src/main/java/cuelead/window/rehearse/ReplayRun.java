package cuelead.window.rehearse;

import cuelead.report.Refused;
import cuelead.steer.DeviceChoice;
import cuelead.steer.SoundDevices;
import cuelead.steer.SpeakerPair;
import cuelead.studio.ReplayPlay;
import cuelead.voice.MonoSound;
import java.util.function.Consumer;

/** Plays one replayed call on a thread of its own. */
final class ReplayRun {
    private final Thread thread;

    /** What is played; it may have to be made first. */
    interface Making {
        MonoSound make() throws Refused;
    }

    /** Begins at once; {@code tell} is told why it cannot be heard. */
    ReplayRun(Making making, DeviceChoice choice, SoundDevices devices, Consumer<String> tell) {
        thread = new Thread(() -> play(making, choice, devices, tell), "cuelead-replay");
        thread.setDaemon(true);
        thread.start();
    }

    private static void play(Making making, DeviceChoice choice, SoundDevices devices, Consumer<String> tell) {
        try {
            MonoSound sound = making.make();
            try (SpeakerPair speakers = choice.open(devices, ReplayPlay.RATE)) {
                ReplayPlay.play(sound, speakers.main());
            }
        } catch (Refused refused) {
            tell.accept(refused.getMessage());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt(); // another one is to be heard
        }
    }

    void stop() {
        thread.interrupt();
    }
}
