package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.dance.Part;
import cuelead.dance.Tag;
import cuelead.lesson.Piece.PartChange;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Where a dance goes on otherwise than from section to section: what dancers stumble over, and drill alone. */
final class Changes {
    private Changes() {}

    /** Restarts in the order of the sheet. */
    static List<Piece> restarts(Dance dance) {
        return dance.restarts().stream()
                .<Piece>map(restart -> new Piece.RestartOf(restart.wall()))
                .distinct()
                .toList();
    }

    /** Every wall with a tag, in the order of the sheet. */
    static List<Piece> tags(Dance dance) {
        return tagsOf(dance.tags().stream().flatMapToInt(tag -> wallsOf(tag, dance)));
    }

    /** Each tag where it comes first. */
    static List<Piece> firstTags(Dance dance) {
        return tagsOf(
                dance.tags().stream().flatMapToInt(tag -> wallsOf(tag, dance).limit(1)));
    }

    private static List<Piece> tagsOf(IntStream walls) {
        return walls.<Piece>mapToObj(Piece.TagOf::new).distinct().toList();
    }

    private static IntStream wallsOf(Tag tag, Dance dance) {
        List<String> sequence = dance.sequence();
        if (sequence.isEmpty()) {
            return tag.afterWalls().stream().mapToInt(wall -> wall);
        }
        return IntStream.range(0, sequence.size())
                .filter(at -> sequence.get(at).equals(tag.part().name()))
                .map(at -> (int) sequence.subList(0, at).stream()
                        .filter(name -> isPart(name, dance))
                        .count())
                .filter(wall -> wall > 0);
    }

    /** Each part that another one follows, in the order of the sequence. */
    static List<Piece> ofParts(Dance dance) {
        Set<Piece> changes = new LinkedHashSet<>();
        List<String> sequence = dance.sequence();
        for (int i = 0; i + 1 < sequence.size(); i++) {
            String from = sequence.get(i);
            String to = sequence.get(i + 1);
            if (!from.equals(to) && isPart(from, dance) && isPart(to, dance)) {
                changes.add(new PartChange(from, to));
            }
        }
        return List.copyOf(changes);
    }

    private static boolean isPart(String name, Dance dance) {
        return dance.parts().stream().map(Part::name).anyMatch(name::equals);
    }
}
