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

    /** Whether a click is heard. */
    public enum Click {
        SILENT,
        EVERY_BEAT
    }

    /** A wish for all of a dance as its sheet has it, which may be changed. */
    public static Asked of(Path sheet) {
        return new Asked(sheet);
    }

    /** A wish like this one, which may be changed. */
    public Asked again() {
        return of(sheet)
                .song(song)
                .tempo(tempo)
                .leadBeats(leadBeats)
                .calls(level, fading)
                .click(click)
                .voice(voice)
                .ownFigures(ownFigures)
                .rate(rate)
                .between(fromSeconds, toSeconds)
                .callsGo(callsGo)
                .speed(speed)
                .way(way)
                .dip(dip);
    }

    /** A wish that is put together: every word, no click, the usual voice, as long as nothing else is asked for. */
    public static final class Asked {
        private final Path sheet;
        private Optional<Path> song = Optional.empty();
        private Optional<Tempo> tempo = Optional.empty();
        private OptionalDouble leadBeats = OptionalDouble.empty();
        private CallLevel level = CallLevel.WORDS;
        private CallSettings.Fading fading = CallSettings.Fading.STEADY;
        private Click click = Click.SILENT;
        private VoiceWish voice = VoiceWish.USUAL;
        private Optional<Path> ownFigures = Optional.empty();
        private Optional<SampleRate> rate = Optional.empty();
        private double fromSeconds;
        private OptionalDouble toSeconds = OptionalDouble.empty();
        private CallsGo callsGo = CallsGo.WITH_THE_MUSIC;
        private Speed speed = Speed.ORIGINAL;
        private Way way = Way.AS_WRITTEN;
        private DipWish dip = DipWish.USUAL;

        private Asked(Path sheet) {
            this.sheet = sheet;
        }

        public Asked song(Optional<Path> file) {
            song = file;
            return this;
        }

        public Asked tempo(Optional<Tempo> without) {
            tempo = without;
            return this;
        }

        public Asked leadBeats(OptionalDouble beats) {
            leadBeats = beats;
            return this;
        }

        public Asked calls(CallLevel much, CallSettings.Fading fewer) {
            level = much;
            fading = fewer;
            return this;
        }

        public Asked click(Click heard) {
            click = heard;
            return this;
        }

        public Asked voice(VoiceWish speaker) {
            voice = speaker;
            return this;
        }

        public Asked ownFigures(Optional<Path> file) {
            ownFigures = file;
            return this;
        }

        public Asked rate(Optional<SampleRate> ofSound) {
            rate = ofSound;
            return this;
        }

        /** Where sound begins and ends, at the song's own speed. */
        public Asked between(double beginSeconds, OptionalDouble endSeconds) {
            fromSeconds = beginSeconds;
            toSeconds = endSeconds;
            return this;
        }

        public Asked callsGo(CallsGo where) {
            callsGo = where;
            return this;
        }

        public Asked speed(Speed fast) {
            speed = fast;
            return this;
        }

        public Asked way(Way danced) {
            way = danced;
            return this;
        }

        public Asked dip(DipWish music) {
            dip = music;
            return this;
        }

        public Wish wish() {
            return new Wish(
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
                    way,
                    dip);
        }
    }
}
