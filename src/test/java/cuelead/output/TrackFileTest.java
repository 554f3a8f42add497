package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sound is read back as songs are, tags by {@link WrittenTags}. */
class TrackFileTest {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final TrackTags TAGS = new TrackTags("Lamp on the Quay, section 2", new Tempo(103.7));

    @TempDir
    private Path folder;

    /** Short bursts of noise and a tone, different on both sides, interleaved. */
    private static float[] bursts(int frames, int hz) {
        Random random = new Random(7);
        float[] samples = new float[2 * frames];
        for (int i = 0; i < frames; i++) {
            double noise = i % (hz / 3) < hz / 50 ? 0.3 * random.nextGaussian() : 0;
            double tone = 0.25 * Math.sin(2 * Math.PI * 440 * i / hz);
            samples[2 * i] = (float) Math.max(-0.9, Math.min(0.9, tone + noise));
            samples[2 * i + 1] = (float) Math.max(-0.9, Math.min(0.9, 0.5 * tone - noise));
        }
        return samples;
    }

    private static Sound sound(float[] samples) {
        return new Sound() {
            private int next;

            @Override
            public int read(float[] interleaved, int wanted) {
                int got = Math.min(wanted, samples.length / 2 - next);
                System.arraycopy(samples, 2 * next, interleaved, 0, 2 * got);
                next += got;
                return got;
            }
        };
    }

    private Path written(float[] samples, SampleRate rate, String name) throws Exception {
        Path file = folder.resolve(name);
        new TrackFile().write(sound(samples), rate, TAGS, file);
        return file;
    }

    private static float[] read(Path file, SampleRate rate) throws Exception {
        try (Song song = SongFile.open(file, Optional.empty())) {
            song.loaded().get();
            assertEquals(List.of(), song.problems());
            assertEquals(rate, song.pcm().rate());
            int frames = Math.toIntExact(song.pcm().lengthFrames());
            float[] samples = new float[2 * frames];
            song.pcm().copy(0, samples, frames);
            return samples;
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Whole blocks, a few frames more, less than a block, and next to nothing. */
    @ParameterizedTest
    @ValueSource(ints = {8 * 4096, 8 * 4096 + 1, 50_000, 4096 + 2, 4096 + 63, 4096 + 64, 100, 16, 1})
    void flacHoldsTheSamplesOfWav(int frames) throws Exception {
        float[] samples = bursts(frames, RATE.hz());
        float[] wav = read(written(samples, RATE, "a.wav"), RATE);
        assertEquals(2 * frames, wav.length);
        assertArrayEquals(wav, read(written(samples, RATE, "a.flac"), RATE));
    }

    @Test
    void flacPacks() throws Exception {
        float[] samples = bursts(60_000, RATE.hz());
        long wav = Files.size(written(samples, RATE, "a.wav"));
        assertTrue(Files.size(written(samples, RATE, "a.flac")) < 0.8 * wav);
    }

    @ParameterizedTest
    @CsvSource({"8000,4000", "11025,5001", "12000,577", "16000,30000", "22050,1", "24000,576", "32000,40000"})
    void mp3KeepsLengthPlaceAndLevelAtLowRates(int hz, int frames) throws Exception {
        assertSameButForCoding(new SampleRate(hz), frames);
    }

    @ParameterizedTest
    @CsvSource({"44100,100000", "44100,1152", "44100,1151", "44100,47", "48000,70001"})
    void mp3KeepsLengthPlaceAndLevel(int hz, int frames) throws Exception {
        assertSameButForCoding(new SampleRate(hz), frames);
    }

    private void assertSameButForCoding(SampleRate rate, int frames) throws Exception {
        float[] samples = bursts(frames, rate.hz());
        float[] coded = read(written(samples, rate, "a.mp3"), rate);
        assertEquals(samples.length, coded.length);
        if (frames < 4000) {
            return; // too little to be compared
        }
        double here = product(samples, coded, 0);
        for (int lag = 1; lag < 3000; lag++) {
            assertTrue(product(samples, coded, lag) < here && product(coded, samples, lag) < here, "lag " + lag);
        }
        double gainDb = 20 * Math.log10(tone(coded, rate) / tone(samples, rate));
        assertEquals(0, gainDb, 0.1);
    }

    /** How much of the tone of {@link #bursts} is in the left channel, its first tenth left out. */
    private static double tone(float[] samples, SampleRate rate) {
        double sine = 0;
        double cosine = 0;
        for (int i = samples.length / 20; i < samples.length / 2; i++) {
            double turn = 2 * Math.PI * 440 * i / rate.hz();
            sine += samples[2 * i] * Math.sin(turn);
            cosine += samples[2 * i] * Math.cos(turn);
        }
        return Math.hypot(sine, cosine);
    }

    /** Of one with the other so many frames later. */
    private static double product(float[] one, float[] later, int lagFrames) {
        double sum = 0;
        for (int i = 0; i + 2 * lagFrames < one.length; i++) {
            sum += one[i] * later[i + 2 * lagFrames];
        }
        return sum;
    }

    @Test
    void titleAndTempoAreInEveryFormat() throws Exception {
        float[] samples = bursts(5_000, RATE.hz());
        assertEquals(
                Map.of("INAM", TAGS.title(), "ICMT", "104 beats a minute"),
                WrittenTags.ofWav(Files.readAllBytes(written(samples, RATE, "a.wav"))));
        assertEquals(
                Map.of("TITLE", TAGS.title(), "BPM", "104"),
                WrittenTags.ofFlac(Files.readAllBytes(written(samples, RATE, "a.flac"))));
        assertEquals(
                Map.of("TIT2", TAGS.title(), "TBPM", "104"),
                WrittenTags.ofMp3(Files.readAllBytes(written(samples, RATE, "a.mp3"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ærlig Å", "Вальс", "ワルツ", "", "odd", "even"})
    void titlesOfAnyLettersAreRead(String title) throws Exception {
        TrackTags tags = new TrackTags(title, new Tempo(90));
        for (String name : List.of("a.wav", "a.flac", "a.mp3")) {
            new TrackFile().write(sound(bursts(2_000, RATE.hz())), RATE, tags, folder.resolve(name));
        }
        assertEquals(title, WrittenTags.ofWav(bytes("a.wav")).get("INAM"));
        assertEquals(title, WrittenTags.ofFlac(bytes("a.flac")).get("TITLE"));
        assertEquals(title, WrittenTags.ofMp3(bytes("a.mp3")).get("TIT2"));
    }

    private byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(folder.resolve(name));
    }

    @Test
    void aTitleIsOneLine() {
        assertEquals("two lines", new TrackTags("two\n\0lines\r\n", new Tempo(90)).title());
    }

    @Test
    void theEndingNamesTheFormatInCapitalsToo() throws Exception {
        assertEquals(TrackFormat.MP3, TrackFormat.of(Path.of("Home.MP3")));
        assertEquals(TrackFormat.FLAC, TrackFormat.of(Path.of("a.wav.flac")));
        assertEquals(TrackFormat.WAV, TrackFormat.of(Path.of("a.mp3/b.wav")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.ogg", "a.m4a", "a", "wav", "a.mp3.txt"})
    void otherEndingsAreRefused(String name) throws IOException {
        Path file = folder.resolve(name);
        Refused refused =
                assertThrows(Refused.class, () -> new TrackFile().write(sound(new float[8]), RATE, TAGS, file));
        assertEquals(
                "Cannot write " + file + ": the name of a track must end in .wav, .flac or .mp3.",
                refused.getMessage());
        assertEquals(List.of(), names());
    }

    @Test
    void aRateThatMp3DoesNotKnowIsRefused() throws Exception {
        SampleRate high = new SampleRate(96_000);
        Refused refused = assertThrows(Refused.class, () -> written(new float[8], high, "a.mp3"));
        assertEquals(
                "An MP3 file cannot hold 96000 samples a second; write a .wav or .flac file, or choose another rate (--rate 44100).",
                refused.getMessage());
        assertEquals(List.of(), names());
        float[] samples = bursts(20_000, 96_000);
        assertArrayEquals(read(written(samples, high, "a.wav"), high), read(written(samples, high, "a.flac"), high));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.wav", "a.flac", "a.mp3"})
    void equalSoundsGiveEqualFiles(String name) throws Exception {
        float[] samples = bursts(20_000, RATE.hz());
        byte[] first = Files.readAllBytes(written(samples, RATE, name));
        assertArrayEquals(first, Files.readAllBytes(written(samples, RATE, name)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.wav", "a.flac", "a.mp3"})
    void aFullDiskLeavesTheOldFileAndNothingElse(String name) throws Exception {
        Path file = Files.writeString(folder.resolve(name), "an older file");
        TrackFile full = new TrackFile(path -> new FullDisk(OpensChannel.ON_DISK.open(path)));
        Sound eightSeconds = sound(bursts(8 * RATE.hz(), RATE.hz()));
        Refused refused = assertThrows(Refused.class, () -> full.write(eightSeconds, RATE, TAGS, file));
        assertEquals(
                "Cannot write " + file + ": the disk is full; make room or choose another folder.",
                refused.getMessage());
        assertEquals("an older file", Files.readString(file));
        assertEquals(List.of(name), names());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.wav", "a.flac", "a.mp3"})
    void anInterruptLeavesNothing(String name) throws IOException {
        Sound interrupting = (interleaved, frames) -> {
            Thread.currentThread().interrupt();
            return frames;
        };
        assertThrows(
                InterruptedException.class,
                () -> new TrackFile().write(interrupting, RATE, TAGS, folder.resolve(name)));
        assertEquals(List.of(), names());
    }

    @Test
    void aMissingFolderIsNamed() {
        Path file = folder.resolve("none").resolve("mix.mp3");
        Refused refused =
                assertThrows(Refused.class, () -> new TrackFile().write(sound(new float[8]), RATE, TAGS, file));
        assertEquals(
                "Cannot write " + file + ": there is no folder " + file.getParent()
                        + "; make it first or choose another.",
                refused.getMessage());
    }
}
