package cuelead.practice;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a user asks to practise.
 *
 * @param sheet       the step sheet
 * @param song        the song; empty = the one that the sheet names, or none with a tempo
 * @param tempo       practise at this tempo without music; empty = with the song
 * @param leadBeats   how early calls come; empty = as the sheet says, else 2
 * @param level       how much is called
 * @param fading      whether calls grow fewer from wall to wall
 * @param click       whether a click is heard
 * @param voice       who speaks
 * @param ownFigures  a file of figures and local names of the user's own
 * @param rate        sample rate of the sound; empty = the song's own, 44,100 Hz without a song
 * @param fromSeconds where in the song sound begins, at its own speed
 * @param toSeconds   where it ends; empty = at the end
 * @param callsGo     where calls and clicks are heard
 * @param speed       how fast the song is played
 * @param way         whether the sheet's easier ways are danced
 * @param dip         how the music goes down under the calls
 */
public record Wish(
        Path sheet,
        Optional<Path> song,
        Optional<Tempo> tempo,
        OptionalDouble leadBeats,
        CallLevel level,
        CallSettings.Fading fading,
        Click click,
        VoiceWish voice,
        Optional<Path> ownFigures,
        Optional<SampleRate> rate,
        double fromSeconds,
        OptionalDouble toSeconds,
        CallsGo callsGo,
        Speed speed,
        Way way,
        DipWish dip) {
    /** Which steps are danced where the sheet offers easier ones. */
    public enum Way {
        AS_WRITTEN,
        EASIER
    }

    /** The dance as it is written, and the usual dip. */
    public Wish(
            Path sheet,
            Optional<Path> song,
            Optional<Tempo> tempo,
            OptionalDouble leadBeats,
            CallLevel level,
            CallSettings.Fading fading,
            Click click,
            VoiceWish voice,
            Optional<Path> ownFigures,
            Optional<SampleRate> rate,
            double fromSeconds,
            OptionalDouble toSeconds,
            CallsGo callsGo,
            Speed speed) {
        this(
                sheet,
                song,
                tempo,
                leadBeats,
                level,
                fading,
                click,
                voice,
                ownFigures,
                rate,
                fromSeconds,
                toSeconds,
                callsGo,
                speed,
                Way.AS_WRITTEN,
                DipWish.USUAL);
    }

    /** Whether a click is heard. */
    public enum Click {
        SILENT,
        EVERY_BEAT
    }
}
