package cuelead.cli;

import cuelead.output.FolderOfFiles;
import cuelead.practice.Practice;
import cuelead.practice.Progress;
import cuelead.report.Refused;
import cuelead.voice.Clip;
import java.nio.file.Path;
import java.util.Map;

/**
 * The parts of a practice track as files: the calls and the music as they are in the mix before its limiter, the
 * plan, the spoken words and what they are made of. Sounds are 32-bit floats; all times count from the track's first
 * frame.
 */
final class Stems {
    static final String VOICE = "voice.wav";
    static final String MUSIC = "music.wav";
    static final String PLAN = "plan.csv";
    static final String SEGMENTS = "segs.csv";
    static final String CLIPS = "clips";

    private final Practice practice;
    private final Progress progress;

    Stems(Practice practice, Progress progress) {
        this.practice = practice;
        this.progress = progress;
    }

    /** The plan of a practice as {@code plan.csv} has it. */
    static String plan(Practice practice) {
        ClipNames names = new ClipNames(practice.spokenCalls());
        return new PlanCsv(names, practice.rate(), practice.fromFrame()).print(practice.spokenCalls());
    }

    /** Writes all files, or none; without a song there is no music. */
    void write(Path folder) throws Refused, InterruptedException {
        Map<String, Clip> clips = new ClipNames(practice.spokenCalls()).clips();
        long frames = practice.toFrame() - practice.fromFrame();
        try (FolderOfFiles files = FolderOfFiles.in(folder)) {
            files.addText(PLAN, plan(practice));
            files.addText(SEGMENTS, SegsCsv.print(clips.values()));
            for (Map.Entry<String, Clip> clip : clips.entrySet()) {
                files.addMono(
                        CLIPS + "/" + clip.getKey(),
                        clip.getValue().samples(),
                        clip.getValue().rate());
            }
            files.addSound(
                    VOICE,
                    new CountedSound(practice.voiceStem(), frames, "Writing the calls", progress),
                    practice.rate());
            if (practice.song().isPresent()) {
                files.addSound(
                        MUSIC,
                        new CountedSound(practice.musicStem(), frames, "Writing the music", progress),
                        practice.rate());
            }
            files.putInPlace();
        }
    }
}
