package cuelead.dance;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A dance as read from its sheet.
 *
 * @param header   what its head states
 * @param parts    one part for an ordinary dance; A, B ... for a phrased one; never empty
 * @param sequence names of parts and tags in the order in which they are danced; empty for an ordinary dance,
 *                 whose one part repeats until the song ends
 * @param tags     danced after certain walls, or where the sequence names them
 * @param restarts walls that are broken off
 * @param ending   how the sheet says to finish
 * @param claims   what the sheet claims about facings, length and walls, for the checker
 * @param options  easier ways to dance some counts
 */
public record Dance(
        Header header,
        List<Part> parts,
        List<String> sequence,
        List<Tag> tags,
        List<Restart> restarts,
        Optional<Ending> ending,
        Claims claims,
        List<EasyOption> options) {
    public Dance {
        parts = List.copyOf(parts);
        sequence = List.copyOf(sequence);
        tags = List.copyOf(tags);
        restarts = List.copyOf(restarts);
        options = List.copyOf(options);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a dance needs at least one part");
        }
    }

    /** A dance without easier ways. */
    public Dance(
            Header header,
            List<Part> parts,
            List<String> sequence,
            List<Tag> tags,
            List<Restart> restarts,
            Optional<Ending> ending,
            Claims claims) {
        this(header, parts, sequence, tags, restarts, ending, claims, List.of());
    }

    /** A dance made without a sheet, which claims nothing. */
    public Dance(
            Header header,
            List<Part> parts,
            List<String> sequence,
            List<Tag> tags,
            List<Restart> restarts,
            Optional<Ending> ending) {
        this(header, parts, sequence, tags, restarts, ending, Claims.NONE);
    }

    /** The same with easier ways. */
    public Dance with(List<EasyOption> easier) {
        return new Dance(header, parts, sequence, tags, restarts, ending, claims, easier);
    }

    /** The same with other claims. */
    Dance with(Claims others) {
        return new Dance(header, parts, sequence, tags, restarts, ending, others, options);
    }

    /** The same, from another first count. */
    public Dance beginning(CountOne countOne) {
        return new Dance(header.beginning(countOne), parts, sequence, tags, restarts, ending, claims, options);
    }

    /** The same with other restarts. */
    Dance restarting(List<Restart> others) {
        return new Dance(header, parts, sequence, tags, others, ending, claims, options);
    }

    /** The dance with its easier ways in the place of what they are for, as far as they end as that does. */
    public Dance easy() {
        return EasyWay.of(this);
    }

    /** Whether {@link #easy} dances an easier way: it tells steps that end on the same foot, facing the same wall. */
    public boolean isDanced(EasyOption option) {
        return EasyWay.sectionOf(option, this)
                .filter(section -> EasyWay.endsAlike(option, section))
                .isPresent();
    }

    /** All sections, those of tags behind those of parts. */
    public Stream<Section> sections() {
        return Stream.concat(parts.stream(), tags.stream().map(Tag::part)).flatMap(part -> part.sections().stream());
    }

    public boolean isPhrased() {
        return !sequence.isEmpty() || parts.size() > 1;
    }

    /** Counts of one wall of an ordinary dance; of all parts, each once, of a phrased one. */
    public int counts() {
        return parts.stream().mapToInt(Part::counts).sum();
    }
}
