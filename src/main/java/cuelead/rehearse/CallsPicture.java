package cuelead.rehearse;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * All calls in one picture: along the song from left to right, above the middle line what came late and below it what came
 * early, with the band that counts as on time and a line where each wall begins. What was missed lies on the lowest edge.
 */
public final class CallsPicture {
    private static final int WIDTH = 1_400;
    private static final int HEIGHT = 700;
    /** What is further off is drawn at the edge. */
    private static final double EDGE_MS = 400;

    private static final Color ON_TIME = new Color(0x2E7D32);
    private static final Color EARLY = new Color(0x1565C0);
    private static final Color LATE = new Color(0xC62828);
    private static final Color OTHER = new Color(0x6A1B9A);
    private static final Color GREY = new Color(0x9E9E9E);

    private final Review review;
    private final XYChart chart;

    private CallsPicture(Review review) {
        this.review = review;
        chart = new XYChartBuilder()
                .width(WIDTH)
                .height(HEIGHT)
                .title(title())
                .xAxisTitle("seconds of the song")
                .yAxisTitle("milliseconds: early below, late above")
                .build();
        Styler styler = chart.getStyler();
        styler.setLegendPosition(Styler.LegendPosition.OutsideS);
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        chart.getStyler().setYAxisMin(-EDGE_MS);
        chart.getStyler().setYAxisMax(EDGE_MS);
        chart.getStyler().setMarkerSize(9);
        drawGround();
        draw(CallKind.OK, "on time", ON_TIME, SeriesMarkers.CIRCLE);
        draw(CallKind.EARLY, "early", EARLY, SeriesMarkers.TRIANGLE_DOWN);
        draw(CallKind.LATE, "late", LATE, SeriesMarkers.TRIANGLE_UP);
        draw(CallKind.WRONG, "other word", OTHER, SeriesMarkers.SQUARE);
        draw(CallKind.EXTRA, "said besides", GREY, SeriesMarkers.PLUS);
        draw(CallKind.MISSED, "missed", LATE, SeriesMarkers.CROSS);
    }

    public static CallsPicture of(Review review) {
        return new CallsPicture(review);
    }

    private String title() {
        return String.format(
                Locale.ROOT,
                "%d of %d calls on time (within %.0f ms)",
                review.count(CallKind.OK),
                review.planned(),
                CallKind.ON_TIME_MS);
    }

    private void drawGround() {
        if (review.calls().isEmpty()) {
            return;
        }
        double first = review.calls().get(0).seconds();
        double last = review.calls().get(review.calls().size() - 1).seconds();
        line("the beat it was planned for", first, 0, last, 0, ON_TIME, 2);
        line("as late as on time goes", first, CallKind.ON_TIME_MS, last, CallKind.ON_TIME_MS, GREY, 1);
        line("as early as on time goes", first, -CallKind.ON_TIME_MS, last, -CallKind.ON_TIME_MS, GREY, 1);
        int wall = 0;
        for (ReviewedCall call : review.calls()) {
            int now = call.planned().map(PlannedCall::wall).orElse(wall);
            if (now > wall) {
                line("wall " + now, call.seconds(), -EDGE_MS, call.seconds(), EDGE_MS, Color.LIGHT_GRAY, 1);
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
        List<Double> errors = new ArrayList<>();
        for (ReviewedCall call : review.calls()) {
            if (call.kind() == kind) {
                seconds.add(call.seconds());
                double outside = kind == CallKind.MISSED ? -EDGE_MS : 0;
                double error = call.errorMs().orElse(outside);
                errors.add(Math.max(-EDGE_MS, Math.min(EDGE_MS, error)));
            }
        }
        if (seconds.isEmpty()) {
            return;
        }
        XYSeries series = chart.addSeries(name + " (" + seconds.size() + ")", seconds, errors);
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(marker);
        series.setMarkerColor(colour);
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
