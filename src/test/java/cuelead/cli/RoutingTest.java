package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.cli.Bench.Outcome;
import cuelead.song.SongFile;
import cuelead.steer.LostDevices;
import cuelead.steer.PlayState;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where calls and music go: to which devices, and to which sides. */
class RoutingTest {
    /** A piece of the demo in which words are called, so short that all of it is loaded before it begins to play. */
    private static final String[] PIECE = {"--from", "10", "--to", "13"};

    @TempDir
    static Path temp;

    private final Bench bench = Bench.withDevice(temp);

    private Outcome play(String... options) {
        return run("play", options);
    }

    private Outcome run(String command, String... options) {
        String[] all = new String[options.length + 2 + PIECE.length];
        all[0] = command;
        all[1] = Bench.DEMO_SHEET;
        System.arraycopy(PIECE, 0, all, 2, PIECE.length);
        System.arraycopy(options, 0, all, 2 + PIECE.length, options.length);
        return bench.run(all);
    }

    @Test
    void devicesAreListedWithTheUsualOne() {
        assertEquals(
                List.of(
                        "* Hall speaker",
                        "  Left earphone",
                        "  Desk speaker",
                        "Microphones:",
                        "* Desk microphone",
                        "  Headset"),
                bench.run("devices").out().lines().toList());
        Outcome none = Bench.withoutDevice(temp).run("devices");
        assertEquals(1, none.exitCode());
        assertEquals("There is no sound device; connect one.", none.err().strip());
    }

    @Test
    void aMicrophoneIsChosenByName() {
        Path words = temp.resolve("words");
        String[] record = {"record", Bench.DEMO_SHEET, "--hands-free", "--folder", words.toString(), "--device", ""};
        record[record.length - 1] = "head";
        assertEquals("No microphone, Headset.", bench.run(record).err().strip());
        record[record.length - 1] = "xyzzy";
        Outcome none = bench.run(record);
        assertEquals(1, none.exitCode());
        assertEquals(
                "There is no microphone \"xyzzy\"; connect it, or choose from \"Desk microphone\", \"Headset\".",
                none.err().strip());
    }

    @Test
    void callsAloneGoToTheEarAndTheMusicToTheUsualDevice() throws Exception {
        Outcome outcome = play("--ear", "earphone");
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertEquals(List.of(Optional.of(Bench.HALL), Optional.of(Bench.EAR)), bench.openedNames);
        assertTrue(likeness(mono(bench.opened.get(1)), stem("voice.wav")) > 0.99);
        // where nothing is called nothing dips
        assertTrue(likeness(mono(bench.opened.get(0)), stem("music.wav", "--calls", "none")) > 0.99);
        assertTrue(bench.opened.stream().allMatch(FakeSpeakers::isClosed));
        assertTrue(outcome.err().contains("broke off 4 times"), outcome.err());
    }

    private float[] stem(String name, String... options) throws Exception {
        Path stems = temp.resolve("stems-" + name);
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(List.of("-o", temp.resolve("x.wav").toString(), "--stems", stems.toString()));
        assertEquals(0, run("render", all.toArray(String[]::new)).exitCode());
        return SongFile.readAll(stems.resolve(name)).monoSamples();
    }

    private static float[] mono(FakeSpeakers speakers) {
        float[] heard = speakers.heard();
        float[] mono = new float[heard.length / 2];
        for (int i = 0; i < mono.length; i++) {
            mono[i] = (heard[2 * i] + heard[2 * i + 1]) / 2;
        }
        return mono;
    }

    private static double likeness(float[] a, float[] b) {
        double product = 0;
        double powerA = 0;
        double powerB = 0;
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            product += a[i] * b[i];
            powerA += a[i] * a[i];
            powerB += b[i] * b[i];
        }
        return product / Math.sqrt(powerA * powerB);
    }

    @Test
    void aNamedDeviceIsTaken() {
        assertEquals(0, play("--device", "LEFT").exitCode());
        assertEquals(List.of(Optional.of(Bench.EAR)), bench.openedNames);
    }

    @Test
    void whatIsNotThereOrNotDistinctOpensNothing() {
        assertRefused(
                "There is no sound device \"bone\"; connect it, or choose from \"Hall speaker\", \"Left earphone\","
                        + " \"Desk speaker\".",
                play("--ear", "bone"));
        assertRefused(
                "\"speaker\" may be \"Hall speaker\" or \"Desk speaker\"; write more of the name.",
                play("--device", "speaker"));
        assertRefused(
                "The music goes to \"Hall speaker\" as well; name another device for it with --device, or put the"
                        + " calls on one side with --side.",
                play("--ear", "hall"));
        assertEquals(List.of(), bench.openedNames);
    }

    @Test
    void whereTheSecondDeviceCannotBeOpenedTheFirstIsClosed() {
        assertRefused("Taken.", play("--ear", "desk"));
        assertEquals(1, bench.opened.size());
        assertTrue(bench.opened.get(0).isClosed());
    }

    private static void assertRefused(String sentence, Outcome outcome) {
        assertEquals(1, outcome.exitCode());
        assertEquals("", outcome.out());
        List<String> lines = outcome.err().strip().lines().toList();
        assertEquals(sentence, lines.get(lines.size() - 1));
    }

    @Test
    void aTrackHasCallsAndMusicOnTheirSides() throws Exception {
        Path track = temp.resolve("sides.wav");
        Path stems = temp.resolve("sides");
        Outcome outcome = run("render", "--side", "left", "-o", track.toString(), "--stems", stems.toString());
        assertEquals(0, outcome.exitCode(), outcome.err());
        float[][] sides = sides(track);
        assertTrue(
                likeness(sides[0], SongFile.readAll(stems.resolve("voice.wav")).monoSamples()) > 0.99);
        assertTrue(
                likeness(sides[1], SongFile.readAll(stems.resolve("music.wav")).monoSamples()) > 0.99);
    }

    /** Left and right of a file of 16 bits. */
    private static float[][] sides(Path track) throws Exception {
        try (AudioInputStream sound = AudioSystem.getAudioInputStream(track.toFile())) {
            ByteBuffer bytes = ByteBuffer.wrap(sound.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
            float[][] sides = new float[2][bytes.limit() / 4];
            for (int i = 0; i < sides[0].length; i++) {
                sides[0][i] = bytes.getShort();
                sides[1][i] = bytes.getShort();
            }
            return sides;
        }
    }

    @Test
    void lostDevicesAreToldOnceEachAndCounted() {
        SampleRate rate = new SampleRate(8_000);
        FakeSpeakers main = new FakeSpeakers(rate);
        FakeSpeakers ear = new FakeSpeakers(rate);
        LostDevices lost = new LostDevices(new SpeakerPair(main, Optional.of(ear)));
        assertEquals(List.of(), lost.news());
        assertEquals("", lost.missing());
        assertEquals(PlayState.Motion.PLAYING, lost.motion(PlayState.Motion.PLAYING));
        ear.lose();
        String earGone = "The calls' device is gone; the music goes on, and the calls join in again.";
        assertEquals(List.of(earGone), lost.news());
        assertEquals(earGone, lost.missing());
        assertEquals(PlayState.Motion.NO_CALLS, lost.motion(PlayState.Motion.PLAYING));
        main.lose();
        assertEquals(List.of("The music's device is gone; the practice goes on when one is connected."), lost.news());
        assertEquals("Both sound devices are gone; the practice goes on when one is connected.", lost.missing());
        assertEquals(PlayState.Motion.NO_DEVICE, lost.motion(PlayState.Motion.PAUSED));
        assertEquals(List.of(), lost.news());
        ear.comeBack();
        assertEquals(List.of("The calls' device is back."), lost.news());
        assertEquals("The music's device is gone; the calls go on, and the music joins in again.", lost.missing());
        assertEquals(PlayState.Motion.NO_MUSIC, lost.motion(PlayState.Motion.PLAYING));
        assertEquals(PlayState.Motion.PAUSED, lost.motion(PlayState.Motion.PAUSED));
        main.comeBack();
        assertEquals(List.of("The music's device is back."), lost.news());
        assertEquals("", lost.missing());
        ear.lose();
        lost.news();
        assertEquals(
                List.of("The music's device was gone 1 time.", "The calls' device was gone 2 times."), lost.account());
    }

    @Test
    void theOnlyDeviceIsTheSoundDevice() {
        FakeSpeakers only = new FakeSpeakers(new SampleRate(8_000));
        LostDevices lost = new LostDevices(new SpeakerPair(only, Optional.empty()));
        only.lose();
        assertEquals(List.of("The sound device is gone; the practice goes on when one is connected."), lost.news());
        assertEquals(PlayState.Motion.NO_DEVICE, lost.motion(PlayState.Motion.PLAYING));
        only.comeBack();
        assertEquals(List.of("The sound device is back."), lost.news());
        assertEquals(List.of("The sound device was gone 1 time."), lost.account());
    }
}
