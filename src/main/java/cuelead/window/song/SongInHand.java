package cuelead.window.song;

import cuelead.dance.Dance;
import cuelead.plan.Timeline;
import cuelead.practice.SongDance;
import cuelead.report.Refused;
import cuelead.song.BeatsInHand;
import cuelead.song.Correction;
import cuelead.song.DanceBegin;
import cuelead.song.Hearing;
import cuelead.song.Hearing.Stretch;
import cuelead.song.SongNote;
import cuelead.song.Tapped;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A song whose beats are put right, with the dance over it. Each step is kept at once; one that cannot be kept is not
 * made. Used on one thread.
 */
final class SongInHand {
    private final LoadedSong song;
    private final BeatsInHand hand;
    private Optional<Dance> dance;

    SongInHand(LoadedSong song, Optional<Dance> dance) {
        this.song = song;
        this.dance = dance;
        hand = new BeatsInHand(song.found().hearing().beats(), song.found().comments());
    }

    LoadedSong song() {
        return song;
    }

    BeatGrid beats() {
        return hand.beats();
    }

    Hearing hearing() {
        return hand.hearing();
    }

    Optional<Dance> dance() {
        return dance;
    }

    /** Another dance to the same song, or none. */
    void dance(Optional<Dance> other) {
        dance = other;
    }

    /** The dance over the beats as they are now. */
    Optional<Timeline> timeline() {
        return dance.map(danced -> SongDance.lay(danced, hand.beats(), hand.comments(), song.seconds()));
    }

    /** Where the beats are kept, or would be. */
    Path file() {
        return song.kept().file();
    }

    /** Whether a user wrote the beats or put them right, now or before. */
    boolean isUsers() {
        return hand.isUsers() && (canTakeBack() || !song.hasNoBeat());
    }

    boolean canTakeBack() {
        return hand.isChanged();
    }

    boolean canDoAgain() {
        return hand.hasTakenBack();
    }

    void change(Correction correction, Optional<Stretch> within) throws Refused {
        hand.change(correction, within);
        keepStep();
    }

    void oneAt(int beat, Optional<Stretch> within) throws Refused {
        hand.oneAt(hand.beats().beatSeconds(beat), within);
        keepStep();
    }

    void use(Tapped tapped, Optional<Stretch> within) throws Refused {
        hand.use(tapped, within);
        keepStep();
    }

    void hear(Hearing again) throws Refused {
        hand.hear(again, new SongNote(song.file().getFileName().toString(), song.seconds()));
        keepStep();
    }

    /** The dance begins on a beat, in this song; nothing happens while there is no dance. */
    void beginAt(int beat) throws Refused {
        if (dance.isPresent()) {
            String title = dance.get().header().title();
            hand.begin(new DanceBegin(hand.beats().beatSeconds(beat), title));
            keepStep();
        }
    }

    private void keepStep() throws Refused {
        try {
            keep();
        } catch (Refused notKept) {
            hand.takeBack();
            throw notKept;
        }
    }

    /** Takes the last step back; false where there is none. */
    boolean takeBack() throws Refused {
        if (!hand.takeBack()) {
            return false;
        }
        try {
            keep();
        } catch (Refused notKept) {
            hand.doAgain();
            throw notKept;
        }
        return true;
    }

    /** Does again what was taken back last; false where nothing was. */
    boolean doAgain() throws Refused {
        if (!hand.doAgain()) {
            return false;
        }
        keepStep();
        return true;
    }

    private void keep() throws Refused {
        if (hand.isChanged()) {
            song.kept().keep(hand.beats(), hand.comments());
        } else {
            song.kept().restore();
        }
    }
}
