package cuelead.cli;

import cuelead.voice.Clip;
import java.util.Collection;
import java.util.List;

/** The sounds that the words are made of, with their times on the clip's own time line. */
final class SegsCsv {
    private SegsCsv() {}

    /** @param clips one a distinct word; recorded ones, whose sounds are not known, give no lines */
    static String print(Collection<Clip> clips) {
        StringBuilder text = new StringBuilder(Csv.line(List.of("word", "phone", "start", "end")));
        for (Clip clip : clips) {
            for (Clip.Phone phone : clip.phones()) {
                text.append(new Csv()
                        .add(clip.words())
                        .add(phone.name())
                        .addSeconds(phone.startSeconds())
                        .addSeconds(phone.endSeconds())
                        .line());
            }
        }
        return text.toString();
    }
}
