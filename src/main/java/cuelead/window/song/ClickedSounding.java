package cuelead.window.song;

import cuelead.practice.Delays;
import cuelead.practice.LiveBeats;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.steer.SpeakerPair;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.Optional;

/** A song with clicks on its beats, or without. */
final class ClickedSounding implements Sounding {
    /** The song loads many times faster than it plays: this much is enough to begin with. */
    static final double LOADED_FIRST_SECONDS = 3;

    private final Song song;
    private final SpeakerPair speakers;
    private final LiveBeats live;

    private ClickedSounding(Song song, SpeakerPair speakers, LiveBeats live) {
        this.song = song;
        this.speakers = speakers;
        this.live = live;
    }

    /**
     * Begins to sound.
     *
     * @param clicked the beats that are clicked; empty = none
     */
    static ClickedSounding begin(Path file, OpensSpeakers opening, double fromSeconds, Optional<BeatGrid> clicked)
            throws Refused, InterruptedException {
        Song song = SongFile.open(file, Optional.empty());
        try {
            song.pcm().await(song.pcm().rate().frameAt(fromSeconds + LOADED_FIRST_SECONDS));
            song.checkLoading();
            song.loadAll();
            SpeakerPair speakers = opening.open(song.pcm().rate());
            return new ClickedSounding(
                    song,
                    speakers,
                    new LiveBeats(song, speakers.main(), speakers.ear(), Delays.NONE, fromSeconds, clicked));
        } catch (Refused | InterruptedException | RuntimeException | Error e) {
            song.close();
            throw e;
        }
    }

    @Override
    public double heardSeconds() {
        return live.heardSeconds();
    }

    @Override
    public void tick() throws Refused {
        song.checkLoading();
        live.tick();
    }

    @Override
    public void pause() {
        live.pause();
    }

    @Override
    public void resume() {
        live.resume();
    }

    @Override
    public boolean isPaused() {
        return live.isPaused();
    }

    @Override
    public boolean hasEnded() {
        return live.hasEnded();
    }

    @Override
    public void click(Optional<BeatGrid> beats) {
        beats.ifPresentOrElse(live::click, live::clickNothing);
    }

    @Override
    public void close() {
        speakers.stop();
        speakers.close();
        song.close();
    }
}
