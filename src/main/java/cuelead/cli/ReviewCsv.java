package cuelead.cli;

import cuelead.rehearse.HeardWord;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Review;
import cuelead.rehearse.ReviewedCall;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A review as comma-separated values, a line a call; times are seconds of the song, after the round trip. */
final class ReviewCsv {
    private static final List<String> COLUMNS = List.of("kind", "word", "planned", "heard", "error_ms", "heard_word");
    private static final String SECONDS = "%.6f";
    private static final String MILLISECONDS = "%.1f";

    private ReviewCsv() {}

    static String print(Review review) {
        StringBuilder text = new StringBuilder(Csv.line(COLUMNS));
        review.calls().forEach(call -> text.append(line(call)));
        return text.toString();
    }

    private static String line(ReviewedCall call) {
        return new Csv()
                .add(call.kind().word())
                .add(call.planned().map(PlannedCall::word).orElse(""))
                .add(call.planned()
                        .map(planned -> number(SECONDS, planned.seconds()))
                        .orElse(""))
                .add(number(SECONDS, call.heardSeconds()))
                .add(number(MILLISECONDS, call.errorMs()))
                .add(call.heard().map(HeardWord::word).orElse(""))
                .line();
    }

    private static String number(String format, OptionalDouble number) {
        return number.isPresent() ? number(format, number.getAsDouble()) : "";
    }

    private static String number(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }
}
