package cuelead.window;

import cuelead.practice.Wish;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What is to be practised.
 *
 * @param sheet the step sheet
 * @param song  the song; empty = the one that the sheet names
 * @param tempo beats a minute of clicks in the place of a song
 */
record Chosen(Path sheet, Optional<Path> song, Optional<Tempo> tempo) {
    Wish wish() {
        return Wish.of(sheet).song(song).tempo(tempo).wish();
    }
}
