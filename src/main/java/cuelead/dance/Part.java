package cuelead.dance;

import java.util.List;

/** A run of sections that is danced as a whole: the dance itself, a part A or B of a phrased dance, a tag. */
public record Part(String name, List<Section> sections) {
    public Part {
        sections = List.copyOf(sections);
    }

    /** Length in counts. */
    public int counts() {
        return sections.stream().mapToInt(Section::length).sum();
    }

    public Turn netTurn() {
        return sections.stream().map(Section::netTurn).reduce(Turn.NONE, Turn::plus);
    }
}
