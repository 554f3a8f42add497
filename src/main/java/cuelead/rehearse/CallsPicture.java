package cuelead.rehearse;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * All calls in one picture: along the song from left to right, above the middle line what came late and below it what came
 * early, with the band that counts as on time and a line where each wall begins. What was said besides lies in a lane of
 * its own above all that, and what was missed in one below, with their words.
 */
public final class CallsPicture {
    private static final int WIDTH = 1_400;
    private static final int HEIGHT = 760;
    /** A picture that is not so high needs its height for the calls. */
    private static final int LOW_HEIGHT = 300;

    /** What is further off is drawn at the edge. */
    private static final double EDGE_MS = 400;
    /** The lanes above and below: where they begin, where their marks lie, where their words begin, and where they end. */
    private static final double LANE_FROM = 440;

    private static final double LANE_MARKS = 485;
    private static final double LANE_WORDS = 530;
    private static final double LANE_NAMES = 640;
    private static final double LANE_TO = 660;
    private static final double LANE_NAME_PART = 0.04;
    private static final int LANE_ROWS = 3;

    /** What lies around the plot, and how large a letter is in it: pixels. */
    private static final double MARGIN_X = 150;

    private static final double MARGIN_Y = 150;
    private static final double LETTER_WIDTH = 7;
    private static final double LETTER_HEIGHT = 14;
    /** From a mark to its word: milliseconds, and in a small picture heights of a letter. */
    private static final double BESIDE = 32;

    private static final double BESIDE_LETTERS = 0.75;
    /** From marks to words that do not touch them. */
    private static final double CLEAR_LETTERS = 1.02;

    private static final double SPARE_SECONDS = 3;
    private static final int SECONDS_A_MINUTE = 60;

    private final Review review;
    private final Look look;
    private final XYChart chart;
    private final double fromSeconds;
    private final double toSeconds;
    private final WordsInPicture words;
    /** From a mark to its word, where words of a lane begin and how many rows of them fit: a small picture has fewer. */
    private final double beside;

    private final double laneWords;
    private final int laneRows;

    private CallsPicture(Review review, Look look, int width, int height) {
        this.review = review;
        this.look = look;
        fromSeconds =
                review.calls().stream().mapToDouble(ReviewedCall::seconds).min().orElse(0) - SPARE_SECONDS;
        toSeconds =
                review.calls().stream().mapToDouble(ReviewedCall::seconds).max().orElse(0) + SPARE_SECONDS;
        double letterHeight = LETTER_HEIGHT * 2 * LANE_TO / Math.max(1, height - MARGIN_Y);
        words = new WordsInPicture(
                LETTER_WIDTH * (toSeconds - fromSeconds) / Math.max(1, width - MARGIN_X), letterHeight);
        beside = Math.max(BESIDE, BESIDE_LETTERS * letterHeight);
        laneWords = Math.max(LANE_WORDS, LANE_MARKS + CLEAR_LETTERS * letterHeight);
        laneRows = Math.min(LANE_ROWS, words.rowsWithin(LANE_TO - laneWords));
        chart = new XYChartBuilder()
                .width(width)
                .height(height)
                .title(title())
                .xAxisTitle(height < LOW_HEIGHT ? "" : "minutes and seconds of the song")
                .yAxisTitle("")
                .build();
        style(chart.getStyler());
        drawGround();
        draw(CallKind.OK, "on time", look.onTime(), SeriesMarkers.CIRCLE);
        draw(CallKind.EARLY, "early", look.early(), SeriesMarkers.TRIANGLE_DOWN);
        draw(CallKind.LATE, "late", look.late(), SeriesMarkers.TRIANGLE_UP);
        draw(CallKind.WRONG, "other word", look.other(), SeriesMarkers.SQUARE);
        draw(CallKind.EXTRA, "said besides", look.besides(), SeriesMarkers.DIAMOND);
        draw(CallKind.MISSED, "missed", look.ink(), SeriesMarkers.CROSS);
        writeWords();
    }

    /** On paper, as large as a file of it is. */
    public static CallsPicture of(Review review) {
        return of(review, Look.PAPER, WIDTH, HEIGHT);
    }

    /** For a place of so many pixels. */
    public static CallsPicture of(Review review, Look look, int width, int height) {
        return new CallsPicture(review, look, width, height);
    }

    /** Draws it. */
    public void paint(Graphics2D on, int width, int height) {
        chart.paint(on, width, height);
    }

    private String title() {
        return String.format(
                Locale.ROOT,
                "%d of %d calls on time (within %.0f ms)",
                review.count(CallKind.OK),
                review.planned(),
                CallKind.ON_TIME_MS);
    }

    private void style(XYStyler styler) {
        styler.setLegendPosition(Styler.LegendPosition.OutsideS);
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setXAxisMin(fromSeconds);
        styler.setXAxisMax(toSeconds);
        styler.setYAxisMin(-LANE_TO);
        styler.setYAxisMax(LANE_TO);
        styler.setxAxisTickLabelsFormattingFunction(CallsPicture::minutes);
        styler.setyAxisTickLabelsFormattingFunction(CallsPicture::offBeat);
        styler.setChartBackgroundColor(look.ground());
        styler.setPlotBackgroundColor(look.ground());
        styler.setPlotBorderColor(look.grid());
        styler.setPlotGridLinesColor(look.grid());
        styler.setLegendBackgroundColor(look.ground());
        styler.setLegendBorderColor(look.grid());
        styler.setChartFontColor(look.ink());
        styler.setXAxisTickLabelsColor(look.ink());
        styler.setYAxisTickLabelsColor(look.ink());
        styler.setAxisTickMarksColor(look.grid());
        styler.setMarkerSize(9);
        styler.setAnnotationTextFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        styler.setAnnotationTextFontColor(look.ink());
    }

    // no two labels may be alike: the library tries other steps until none are

    static String minutes(double seconds) {
        double size = Math.abs(seconds);
        double rest = size - SECONDS_A_MINUTE * Math.floor(size / SECONDS_A_MINUTE);
        String told = rest == Math.rint(rest) ? String.format(Locale.ROOT, "%02.0f", rest) : Double.toString(rest);
        return (seconds < 0 ? "-" : "") + (long) Math.floor(size / SECONDS_A_MINUTE) + ":" + told;
    }

    private static String offBeat(double ms) {
        long whole = Math.round(ms);
        if (Math.abs(whole) > EDGE_MS) {
            return whole < 0 ? " ".repeat((int) -whole) : "\t".repeat((int) whole);
        }
        return whole == 0 ? "as planned" : Math.abs(whole) + " ms " + (whole < 0 ? "early" : "late");
    }

    private void drawGround() {
        line("planned", fromSeconds, 0, toSeconds, 0, look.onTime(), 2);
        for (int side : new int[] {-1, 1}) {
            double onTime = side * CallKind.ON_TIME_MS;
            double lane = side * LANE_FROM;
            line("on time " + side, fromSeconds, onTime, toSeconds, onTime, look.grid(), 1);
            line("lane " + side, fromSeconds, lane, toSeconds, lane, look.ink(), 1);
        }
        double nameSeconds = fromSeconds + LANE_NAME_PART * (toSeconds - fromSeconds);
        write("SAID BESIDES", nameSeconds, LANE_NAMES, 1);
        write("MISSED", nameSeconds, -LANE_NAMES, 1);
        int wall = 0;
        for (ReviewedCall call : review.calls()) {
            int now = call.planned().map(PlannedCall::wall).orElse(wall);
            if (now > wall) {
                line("wall " + now, call.seconds(), -LANE_TO, call.seconds(), LANE_TO, look.grid(), 1);
                write("wall " + now, call.seconds(), LANE_FROM - beside, 1);
                wall = now;
            }
        }
    }

    private void line(String name, double x0, double y0, double x1, double y1, Color colour, int width) {
        XYSeries series = chart.addSeries(name, new double[] {x0, x1}, new double[] {y0, y1});
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(colour);
        series.setLineWidth(width);
        series.setShowInLegend(false);
    }

    private void draw(CallKind kind, String name, Color colour, Marker marker) {
        List<Double> seconds = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        for (ReviewedCall call : review.calls()) {
            if (call.kind() == kind) {
                seconds.add(call.seconds());
                heights.add(height(call));
                words.keepFree(call.seconds(), height(call));
            }
        }
        if (seconds.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(name + " (" + seconds.size() + ")", seconds, heights);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(marker);
        series.setMarkerColor(colour);
    }

    private static double height(ReviewedCall call) {
        return switch (call.kind()) {
            case MISSED -> -LANE_MARKS;
            case EXTRA -> LANE_MARKS;
            case OK, EARLY, LATE, WRONG ->
                Math.max(-EDGE_MS, Math.min(EDGE_MS, call.errorMs().orElse(0)));
        };
    }

    /** First those in the lanes, which say nothing without their words; then what was not on time, where there is room. */
    private void writeWords() {
        for (ReviewedCall call : review.calls()) {
            if (call.kind() == CallKind.MISSED) {
                write(call.planned().orElseThrow().word(), call.seconds(), -laneWords, -laneRows);
            } else if (call.kind() == CallKind.EXTRA) {
                write(call.heard().orElseThrow().word(), call.seconds(), laneWords, laneRows);
            }
        }
        for (ReviewedCall call : review.calls()) {
            double side = Math.signum(height(call)) * beside;
            switch (call.kind()) {
                case EARLY, LATE -> write(call.planned().orElseThrow().word(), call.seconds(), height(call) + side, 1);
                case WRONG ->
                    write(
                            call.heard().orElseThrow().word() + " for "
                                    + call.planned().orElseThrow().word(),
                            call.seconds(),
                            height(call) + side,
                            1);
                case OK, MISSED, EXTRA -> {
                    // on time needs no word, and the lanes have theirs
                }
            }
        }
    }

    private void write(String word, double seconds, double height, int rows) {
        words.place(word, seconds, height, rows)
                .ifPresent(at -> chart.addAnnotation(new AnnotationText(at.word(), at.x(), at.y(), false)));
    }

    /** As a PNG file has it. */
    public byte[] png() {
        try {
            return BitmapEncoder.getBitmapBytes(chart, BitmapEncoder.BitmapFormat.PNG);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }
}
