package cuelead.cli;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.practice.ClickedSong;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.Mix;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.nio.file.Path;
import java.util.Optional;

/** A song with a click on each of its beats, to hear whether they are right. */
final class ClickTrack {
    private ClickTrack() {}

    /** Writes it as a WAV file. */
    static void write(Path songFile, BeatGrid beats, Path target) throws Refused, InterruptedException {
        try (Song song = SongFile.open(songFile, Optional.empty())) {
            SampleRate rate = song.pcm().rate();
            song.pcm().await(song.pcm().lengthFrames());
            new WavFile().write(new Mix(ClickedSong.plan(song, beats)), rate, WavFormat.PCM_16, target);
        }
    }
}
