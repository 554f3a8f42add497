package cuelead.compose;

import java.util.List;
import java.util.Locale;

/**
 * The beat file of a song: {@code seconds<TAB>beat in the bar<TAB>count in the phrase} a line, comments behind
 * {@code #}.
 */
final class BeatSheet {
    private BeatSheet() {}

    static String text(Score score, Arrangement arrangement, Performance performance) {
        StringBuilder text = new StringBuilder();
        text.append("# ").append(score.header().title()).append('\n');
        text.append("# made from ").append(score.name()).append(".score; seconds, beat in the bar, count\n");
        int stretch = 0;
        List<Arrangement.GridBeat> beats = arrangement.beats();
        for (int i = 0; i < beats.size(); i++) {
            if (stretch < arrangement.stretches().size()
                    && arrangement.stretches().get(stretch).start().beatIndex() == i) {
                text.append("# ")
                        .append(arrangement.stretches().get(stretch).passage())
                        .append('\n');
                stretch++;
            }
            text.append(String.format(
                    Locale.ROOT,
                    "%.4f\t%d\t%d\n",
                    performance.beats().get(i),
                    beats.get(i).inBar(),
                    beats.get(i).count()));
        }
        return text.toString();
    }
}
