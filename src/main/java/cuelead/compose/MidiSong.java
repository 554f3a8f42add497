package cuelead.compose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/**
 * A performance as General MIDI. Time is real time in ticks of a tenth of a millisecond, not musical time: a tempo
 * map would be rounded at each of its changes. Each note begins its instrument's lead early.
 */
final class MidiSong {
    static final int TICKS_PER_SECOND = 10_000;

    private static final int TICKS_PER_QUARTER = TICKS_PER_SECOND / 2;
    private static final int MICROSECONDS_PER_QUARTER = 500_000;
    private static final int TEMPO = 0x51;
    private static final int KIT_CHANNEL = 9;
    private static final int VOLUME = 7;
    private static final int PAN = 10;
    private static final int PAN_MIDDLE = 64;
    private static final int ROOM = 91;
    private static final int CHORUS = 93;
    /** A controller without a meaning: it marks the end, so that the last notes may ring. */
    private static final int UNDEFINED = 119;

    private final Sequence sequence;
    private final Map<String, Integer> channels = new HashMap<>();
    private final Map<String, Track> tracks = new HashMap<>();

    private MidiSong() throws InvalidMidiDataException {
        sequence = new Sequence(Sequence.PPQ, TICKS_PER_QUARTER);
    }

    static Sequence of(List<Player> band, Performance performance) {
        try {
            return new MidiSong().write(band, performance);
        } catch (InvalidMidiDataException e) {
            throw new IllegalArgumentException("the performance has a note that MIDI cannot express", e);
        }
    }

    private Sequence write(List<Player> band, Performance performance) throws InvalidMidiDataException {
        Track conductor = sequence.createTrack();
        byte[] tempo = {
            (byte) (MICROSECONDS_PER_QUARTER >> 16),
            (byte) (MICROSECONDS_PER_QUARTER >> 8),
            (byte) MICROSECONDS_PER_QUARTER
        };
        conductor.add(new MidiEvent(new MetaMessage(TEMPO, tempo, tempo.length), 0));
        for (Player player : band) {
            seat(player);
        }
        for (Performance.SoundedNote note : performance.notes()) {
            add(note);
        }
        conductor.add(new MidiEvent(control(0, UNDEFINED, 0), ticks(performance.seconds())));
        return sequence;
    }

    /** Gives a player a channel and sets its sound. */
    private void seat(Player player) throws InvalidMidiDataException {
        boolean kit = player.instrument() == Instrument.KIT;
        int melodic =
                (int) channels.values().stream().filter(c -> c != KIT_CHANNEL).count();
        int channel = kit ? KIT_CHANNEL : melodic < KIT_CHANNEL ? melodic : melodic + 1;
        channels.put(player.name(), channel);
        Track track = sequence.createTrack();
        tracks.put(player.name(), track);
        int program = player.instrument().program();
        track.add(new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, channel, program, 0), 0));
        for (MidiMessage setting : List.of(
                control(channel, VOLUME, player.volume()),
                control(channel, PAN, PAN_MIDDLE + player.pan()),
                control(channel, ROOM, player.room()),
                control(channel, CHORUS, 0))) {
            track.add(new MidiEvent(setting, 0));
        }
    }

    private void add(Performance.SoundedNote note) throws InvalidMidiDataException {
        int channel = channels.get(note.player().name());
        double lead = leadSeconds(note.player(), note.pitch());
        long start = ticks(note.startSeconds() - lead);
        long end = Math.max(start + 1, ticks(note.endSeconds() - lead));
        Track track = tracks.get(note.player().name());
        track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, channel, note.pitch(), note.velocity()), start));
        track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_OFF, channel, note.pitch(), 0), end));
    }

    /** How much before it is heard a note begins. */
    static double leadSeconds(Player player, int pitch) {
        return player.instrument() == Instrument.KIT
                ? DrumSound.ofKey(pitch).leadSeconds()
                : player.instrument().leadSeconds();
    }

    private static ShortMessage control(int channel, int controller, int value) throws InvalidMidiDataException {
        return new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, controller, value);
    }

    private static long ticks(double seconds) {
        return Math.max(0, Math.round(seconds * TICKS_PER_SECOND));
    }
}
