package cuelead.compose;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the lines of {@code [band]}: {@code name: instrument volume=.. pan=.. room=.. octave=..}. */
final class BandReader {
    private static final List<String> KEYS = List.of("volume", "pan", "room", "octave");
    private static final int USUAL_VOLUME = 100;
    private static final int USUAL_ROOM = 40;

    private final Complaints complaints;

    BandReader(Complaints complaints) {
        this.complaints = complaints;
    }

    void read(List<ScoreReader.Entry> entries, Map<String, Player> band) {
        for (ScoreReader.Entry entry : entries) {
            readPlayer(entry).ifPresent(player -> band.put(player.name(), player));
        }
    }

    private Optional<Player> readPlayer(ScoreReader.Entry entry) {
        Optional<Instrument> instrument = Instrument.named(entry.place().text());
        if (instrument.isEmpty()) {
            complaints.unknown(entry.place(), "instrument", Instrument.names());
            return Optional.empty();
        }
        List<Word> rest = entry.value().subList(1, entry.value().size());
        Settings settings = new Settings(complaints, rest, KEYS);
        return Optional.of(new Player(
                entry.key().text(),
                instrument.get(),
                settings.whole("volume", 0, USUAL_VOLUME),
                settings.word("pan").map(pan -> settings.whole(pan, -64, 63)).orElse(0),
                settings.whole("room", 0, USUAL_ROOM),
                settings.word("octave").map(up -> settings.whole(up, -3, 3)).orElse(0)));
    }
}
