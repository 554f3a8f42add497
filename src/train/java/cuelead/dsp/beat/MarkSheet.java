package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/**
 * For fitting {@code odds.txt}: hears WAV files (22,050 Hz, 16 bits, one channel) and writes the terms of every beat that
 * the search finds, before it counts. Beside {@code a.wav} comes {@code a.marks}: a line with the terms' names, then a
 * line a beat: seconds, the terms in bars of four, the terms in bars of three.
 */
final class MarkSheet {
    private final OddsTable table = OddsTable.load();
    private final RhythmSearch search = new RhythmSearch(BeatNetwork.load());

    public static void main(String[] files) throws IOException, UnsupportedAudioFileException {
        MarkSheet sheet = new MarkSheet();
        for (String file : files) {
            sheet.write(Path.of(file));
        }
    }

    private void write(Path song) throws IOException, UnsupportedAudioFileException {
        BandSpectrum spectrum = BandSpectrum.of(samples(song));
        Activations network = search.hear(spectrum, done -> {});
        float[][] loudness = spectrum.loudness();
        double[] seconds = search.beats(spectrum, loudness, network, done -> {}).stream()
                .mapToDouble(PathBeat::seconds)
                .toArray();
        Path out = Path.of(song.toString().replaceAll("\\.wav$", ".marks"));
        try (PrintWriter sheet = new PrintWriter(Files.newBufferedWriter(out))) {
            List<OddsTerm> terms = new ArrayList<>(table.bar());
            terms.addAll(table.phrase());
            sheet.println("# bar " + names(table.bar()));
            sheet.println("# phrase " + names(table.phrase()));
            if (seconds.length > 0) {
                HeardBeats heard = new HeardBeats(loudness, network, seconds);
                Marks inFours = new Marks(heard, 4);
                Marks inThrees = new Marks(heard, 3);
                for (int i = 0; i < seconds.length; i++) {
                    sheet.printf(
                            Locale.ROOT, "%.4f%s%s%n", seconds[i], row(terms, inFours, i), row(terms, inThrees, i));
                }
            }
        }
    }

    private static String names(List<OddsTerm> terms) {
        return String.join(
                " ", terms.stream().map(t -> t.mark() + ":" + t.view()).toList());
    }

    private static String row(List<OddsTerm> terms, Marks marks, int beat) {
        StringBuilder row = new StringBuilder();
        for (OddsTerm term : terms) {
            row.append(String.format(Locale.ROOT, " %.4f", term.value(marks, beat)));
        }
        return row.toString();
    }

    private static float[] samples(Path wav) throws IOException, UnsupportedAudioFileException {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(wav.toFile())) {
            byte[] bytes = in.readAllBytes();
            float[] samples = new float[bytes.length / 2];
            for (int i = 0; i < samples.length; i++) {
                samples[i] = (short) (bytes[2 * i] & 0xff | bytes[2 * i + 1] << 8) / 32768f;
            }
            return samples;
        }
    }
}
