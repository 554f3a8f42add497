package cuelead.practice;

import cuelead.report.Refused;
import java.util.Optional;

/**
 * Brings into what plays what was not known when it began: words that had to be guessed, and how loud the song is. Used on
 * one thread.
 */
final class CatchingUp {
    private final LateWords late;
    private final Settling settling;
    private Optional<Refused> trouble = Optional.empty();

    CatchingUp(LateWords late, Settling settling) {
        this.late = late;
        this.settling = settling;
    }

    /** A step of it; to be called some times a second while nothing else is ordered. */
    void goOn(Underway way, Helm helm) {
        if (trouble.isPresent()) {
            return;
        }
        try {
            if (late.areThereFor(way.coming().take(), way.placeSeconds())) {
                helm.callAnew();
            } else {
                settling.next().ifPresent(helm::changeLevels);
            }
        } catch (Refused e) {
            trouble = Optional.of(e);
        }
    }

    /** Throws what was found wrong with the voice or the song, if anything was. */
    void check() throws Refused {
        if (trouble.isPresent()) {
            throw trouble.get();
        }
    }
}
