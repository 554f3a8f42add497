package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.practice.CallsGo;
import cuelead.practice.DipWish;
import cuelead.practice.VoiceWish;
import cuelead.rehearse.Prompts;
import cuelead.sound.Dipping;
import cuelead.steer.Steersman;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The values of options: text to what it means, or one sentence that says what may be written. */
final class Values {
    private static final double MOST_LEAD_BEATS = 16;
    private static final double LEAST_TEMPO = 20;
    private static final double MOST_TEMPO = 400;
    private static final int LEAST_RATE = 8_000;
    private static final int MOST_RATE = 192_000;
    private static final double MOST_DELAY_MILLIS = 2_000;
    /** A day: longer than any song. */
    private static final double MOST_SECONDS = 86_400;

    private Values() {}

    /** More than 0 and at most 16 beats. */
    static final class Lead implements ITypeConverter<Beats> {
        @Override
        public Beats convert(String text) {
            double beats = between(text, 0, MOST_LEAD_BEATS, "a number of beats, more than 0 and at most 16");
            Beats lead = Beats.ofDecimal(beats);
            if (lead.compareTo(Beats.ZERO) <= 0) {
                throw notWhatIsWanted(text, "a number of beats, more than 0 and at most 16");
            }
            return lead;
        }
    }

    /** Tempos that can be danced. */
    static final class BeatsPerMinute implements ITypeConverter<Tempo> {
        @Override
        public Tempo convert(String text) {
            return new Tempo(between(text, LEAST_TEMPO, MOST_TEMPO, "a tempo, 20 to 400 beats a minute"));
        }
    }

    /** Voices that can speak. */
    static final class Speaker implements ITypeConverter<VoiceWish.Speaker> {
        @Override
        public VoiceWish.Speaker convert(String text) {
            return switch (text.toLowerCase(Locale.ROOT)) {
                case "built-in" -> VoiceWish.Speaker.BUILT_IN;
                case "espeak-ng", "espeak" -> VoiceWish.Speaker.ESPEAK_NG;
                default -> throw notWhatIsWanted(text, "a voice: built-in or espeak-ng");
            };
        }
    }

    /** Rates that players know. */
    static final class Rate implements ITypeConverter<SampleRate> {
        @Override
        public SampleRate convert(String text) {
            double hz = between(text, LEAST_RATE, MOST_RATE, "a whole number of Hz, 8000 to 192000, such as 44100");
            if (hz != Math.rint(hz)) {
                throw notWhatIsWanted(text, "a whole number of Hz, 8000 to 192000, such as 44100");
            }
            return new SampleRate((int) hz);
        }
    }

    /** A time of a song: {@code 62.5}, {@code 1:02.5} or {@code 1:00:02.5}; gives seconds. */
    static final class SongTime implements ITypeConverter<Double> {
        private static final String WANTED = "a time of the song, such as 75.5 (seconds) or 1:15.5";
        private static final Pattern CLOCK =
                Pattern.compile("(?:(\\d{1,2}):(?=\\d\\d:))?(\\d{1,3}):([0-5]\\d(?:\\.\\d*)?)");

        @Override
        public Double convert(String text) {
            Matcher clock = CLOCK.matcher(text);
            if (!clock.matches()) {
                return between(text, 0, MOST_SECONDS, WANTED);
            }
            int hours = clock.group(1) == null ? 0 : Integer.parseInt(clock.group(1));
            int minutes = Integer.parseInt(clock.group(2));
            if (clock.group(1) != null && minutes > 59) {
                throw notWhatIsWanted(text, WANTED);
            }
            return (hours * 60 + minutes) * 60 + Double.parseDouble(clock.group(3));
        }
    }

    /** How fast a song is played. */
    static final class SpeedRatio implements ITypeConverter<Speed> {
        private static final String WANTED =
                "a speed from 0.4 to 1.25 (40 to 125 %), where 1 is as it is, such as 0.75 or 75%";

        private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d+)?)\\s*%");

        @Override
        public Speed convert(String text) {
            Matcher percent = PERCENT.matcher(text.strip());
            boolean isPercent = percent.matches();
            int unit = isPercent ? 100 : 1;
            String number = isPercent ? percent.group(1) : text;
            double least = Speed.SLOWEST.ratio() * unit;
            return Speed.of(
                    between(text, number.replace(',', '.'), least, Speed.FASTEST.ratio() * unit, WANTED) / unit);
        }
    }

    /** How much later than the computer a wireless speaker sounds. */
    static final class DelayMillis implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return between(text, 0, MOST_DELAY_MILLIS, "a delay in milliseconds, 0 to 2000");
        }
    }

    /** How much is called. */
    static final class Level implements ITypeConverter<CallLevel> {
        @Override
        public CallLevel convert(String text) {
            String wanted = text.toLowerCase(Locale.ROOT);
            return Arrays.stream(CallLevel.values())
                    .filter(level -> level.word().equals(wanted))
                    .findFirst()
                    .orElseThrow(() -> notWhatIsWanted(text, "one of " + words()));
        }

        private static String words() {
            return Arrays.stream(CallLevel.values()).map(CallLevel::word).collect(Collectors.joining(", "));
        }
    }

    /** How much is prompted. */
    static final class PromptAmount implements ITypeConverter<Prompts.Amount> {
        @Override
        public Prompts.Amount convert(String text) {
            return Arrays.stream(Prompts.Amount.values())
                    .filter(amount -> amount.name().equals(text.toUpperCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> notWhatIsWanted(text, "one of all, fewer, wrong, none"));
        }
    }

    /** The side of the calls. */
    static final class Side implements ITypeConverter<CallsGo> {
        @Override
        public CallsGo convert(String text) {
            return switch (text.toLowerCase(Locale.ROOT)) {
                case "left" -> CallsGo.LEFT;
                case "right" -> CallsGo.RIGHT;
                case "both" -> CallsGo.WITH_THE_MUSIC;
                default -> throw notWhatIsWanted(text, "one of left, right, both");
            };
        }
    }

    /** How the music goes down: {@code all}, {@code band}, {@code 6} or {@code band,6}. */
    static final class Dip implements ITypeConverter<DipWish> {
        private static final String WANTED =
                "a dip: all, band (only 1 to 4 kHz), a number of dB from 0 to 24, or both, such as band,14";

        @Override
        public DipWish convert(String text) {
            DipWish dip = DipWish.USUAL;
            for (String part : text.strip().split("[,\\s]+", -1)) {
                dip = with(dip, part.toLowerCase(Locale.ROOT), text);
            }
            return dip;
        }

        private static DipWish with(DipWish dip, String part, String text) {
            return switch (part) {
                case "all" -> new DipWish(dip.db(), Dipping.Range.WHOLE);
                case "band" -> new DipWish(dip.db(), Dipping.Range.SPEECH_BAND);
                default ->
                    new DipWish(OptionalDouble.of(between(text, part, 0, Steersman.MOST_DIP_DB, WANTED)), dip.range());
            };
        }
    }

    private static double between(String text, double least, double most, String wanted) {
        return between(text, text, least, most, wanted);
    }

    private static double between(String text, String digits, double least, double most, String wanted) {
        double number;
        try {
            number = Double.parseDouble(digits);
        } catch (NumberFormatException e) {
            throw notWhatIsWanted(text, wanted);
        }
        if (!(number >= least && number <= most)) {
            throw notWhatIsWanted(text, wanted);
        }
        return number;
    }

    private static TypeConversionException notWhatIsWanted(String text, String wanted) {
        return new TypeConversionException("\"" + text + "\" is not " + wanted + ".");
    }
}
