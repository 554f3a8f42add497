package cuelead.cli;

import cuelead.output.Targets;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.practice.Voicing;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.HardWords;
import cuelead.voice.Pronunciations;
import cuelead.voice.SpeakableText;
import cuelead.voice.Voice;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Speaks words into a file. */
@Command(
        name = "say",
        header = "Speak call-words into a file.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Speaks call-words into a WAV file, to hear how they sound.",
            "Commas part one call from the next."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead say rock -o rock.wav",
            "  cuelead say \"kick ball change, rock, recover\" -o calls.wav",
            "  cuelead say rock --words my-words -o mine.wav   your recording, if any",
            "  cuelead say chasse --pronounce my-pronunciations.txt -o try.wav"
        })
final class SayCommand implements Callable<Integer> {
    private static final SampleRate USUAL_RATE = new SampleRate(44_100);
    private static final double PAUSE_SECONDS = 0.3;

    private final Surroundings surroundings;

    @Parameters(arity = "1..*", paramLabel = "WORDS", description = "What is to be said.")
    private List<String> words;

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "FILE",
            description = "The WAV file to write.")
    private Path output;

    @Mixin
    private VoiceOptions voiceOptions;

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            converter = Values.Rate.class,
            description = "Sample rate of the file, 8000 to 192000. Usual is 44100.")
    private Optional<SampleRate> rate;

    SayCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        Targets.checkSoundFile(output);
        SampleRate at = rate.orElse(USUAL_RATE);
        List<Problem> problems = new ArrayList<>();
        Voicing voicing = Voicing.of(voiceOptions.wish(), surroundings.places().cache());
        List<Clip> clips = speak(voicing.at(at, problems), voicing.pronunciations());
        new ProblemPrinter(surroundings.err()).tellInShort(problems);
        if (clips.isEmpty()) {
            return Failures.REFUSED;
        }
        new WavFile().writeMono(inARow(clips, at), at, WavFormat.PCM_16, output);
        surroundings.err().println("Wrote " + output + ".");
        return Failures.DONE;
    }

    private List<Clip> speak(Voice voice, Pronunciations users) throws Refused {
        List<Clip> clips = new ArrayList<>();
        for (String call : String.join(" ", words).split(",")) {
            Optional<Clip> clip = call.isBlank() ? Optional.empty() : voice.say(call.strip());
            clip.ifPresentOrElse(clips::add, () -> surroundings.err().println(cannotSay(call.strip())));
            clip.ifPresent(said -> tellDoubts(call.strip(), said, users));
        }
        return clips;
    }

    private void tellDoubts(String call, Clip clip, Pronunciations users) {
        SpeakableText.of(call)
                .filter(read -> !read.equalsIgnoreCase(call))
                .ifPresent(read -> surroundings.err().println("\"" + call + "\" is read as \"" + read + "\"."));
        String unsaid = SpeakableText.unsaid(call);
        if (!unsaid.isEmpty()) {
            surroundings.err().println("The voice leaves out \"" + unsaid + "\"; write it in English letters.");
        }
        boolean isBuiltIn = !clip.phones().isEmpty();
        HardWords.offers(call, users)
                .filter(offers -> isBuiltIn)
                .ifPresent(offers -> surroundings
                        .err()
                        .println("The built-in voice says \"" + call + "\" poorly; you could record it, or call: "
                                + String.join(", ", offers) + "."));
    }

    private static String cannotSay(String call) {
        return "The voice cannot say \"" + call + "\"; try letters and numbers, or record it (--words DIR).";
    }

    private static float[] inARow(List<Clip> clips, SampleRate rate) {
        int pause = rate.framesIn(PAUSE_SECONDS);
        int length = clips.stream().mapToInt(clip -> clip.samples().length).sum() + pause * (clips.size() - 1);
        float[] row = new float[length];
        int at = 0;
        for (Clip clip : clips) {
            System.arraycopy(clip.samples(), 0, row, at, clip.samples().length);
            at += clip.samples().length + pause;
        }
        return row;
    }
}
