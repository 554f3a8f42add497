package cuelead.window;

import cuelead.output.DeviceName;
import cuelead.practice.Places;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.steer.SoundDevices;
import cuelead.time.SampleRate;
import cuelead.window.frame.Course;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Job;
import cuelead.window.frame.Means;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Session;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Holds a page without a window; the computer has no sound. Longer work is done at once. */
public final class FakeHost implements Host {
    private final Means means;
    private final InHand inHand = new InHand(Session.FIRST);
    private final List<String> told = new ArrayList<>();

    public FakeHost(Path folder) {
        means = new Means(new Places(folder, folder), folder.resolve("kept"), new NoSound(), Optional.empty());
    }

    public List<String> told() {
        return told;
    }

    @Override
    public Means means() {
        return means;
    }

    @Override
    public InHand inHand() {
        return inHand;
    }

    @Override
    public Palette palette() {
        return Palette.DARK;
    }

    @Override
    public void tell(String sentence) {
        told.add(sentence);
    }

    @Override
    public <T> void work(String what, Job<T> job, Consumer<T> then) {
        try {
            then.accept(job.run((work, done) -> {}));
        } catch (Refused refused) {
            tell(refused.getMessage());
        } catch (InterruptedException brokenOff) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void hushOthers(Page player) {}

    @Override
    public void practise(Course course) {
        tell(course.name());
    }

    @Override
    public boolean has(PageName page) {
        return true;
    }

    @Override
    public void turnTo(PageName page) {}

    private static final class NoSound implements SoundDevices {
        @Override
        public List<DeviceName> names() {
            return List.of();
        }

        @Override
        public Optional<DeviceName> usual() {
            return Optional.empty();
        }

        @Override
        public Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused {
            throw new Refused("There is no loudspeaker.");
        }

        @Override
        public List<DeviceName> microphones() {
            return List.of();
        }

        @Override
        public Optional<DeviceName> usualMicrophone() {
            return Optional.empty();
        }

        @Override
        public Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused {
            throw new Refused("There is no microphone.");
        }
    }
}
