package cuelead.cli;

import cuelead.output.FolderOfFiles;
import cuelead.practice.CountedSound;
import cuelead.practice.Progress;
import cuelead.practice.Track;
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

    private final Track track;
    private final Progress progress;

    Stems(Track track, Progress progress) {
        this.track = track;
        this.progress = progress;
    }

    /** The plan of a track as {@code plan.csv} has it. */
    static String plan(Track track) {
        ClipNames names = new ClipNames(track.spokenCalls());
        return new PlanCsv(names, track.rate(), track.fromFrame()).print(track.spokenCalls());
    }

    /** Writes all files, or none; without a song there is no music. */
    void write(Path folder) throws Refused, InterruptedException {
        Map<String, Clip> clips = new ClipNames(track.spokenCalls()).clips();
        long frames = track.toFrame() - track.fromFrame();
        try (FolderOfFiles files = FolderOfFiles.in(folder)) {
            files.addText(PLAN, plan(track));
            files.addText(SEGMENTS, SegsCsv.print(clips.values()));
            for (Map.Entry<String, Clip> clip : clips.entrySet()) {
                files.addMono(
                        CLIPS + "/" + clip.getKey(),
                        clip.getValue().samples(),
                        clip.getValue().rate());
            }
            files.addSound(
                    VOICE, new CountedSound(track.voiceStem(), frames, "Writing the calls", progress), track.rate());
            if (track.hasMusic()) {
                files.addSound(
                        MUSIC,
                        new CountedSound(track.musicStem(), frames, "Writing the music", progress),
                        track.rate());
            }
            files.putInPlace();
        }
    }
}
