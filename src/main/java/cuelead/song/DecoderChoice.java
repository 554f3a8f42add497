package cuelead.song;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Looks into a sound file, and chooses and opens its decoder. */
final class DecoderChoice {
    /** MP3 files up to this size are read whole; no song of an allowed length is bigger. */
    private static final long WHOLE_BYTES = 64_000_000;
    /** So far behind its tags the first frame of an MP3 may lie. */
    private static final int SEARCH_BYTES = 1 << 18;

    private static final String FFMPEG = "ffmpeg";

    private final Path file;
    private final Limits limits;
    private final Findings findings;

    private DecoderChoice(Path file, Limits limits, Findings findings) {
        this.file = file;
        this.limits = limits;
        this.findings = findings;
    }

    /** Opens a file, or throws {@code Refused} when it cannot be used; warnings about what can go to {@code findings} */
    static Decoder open(Path file, Limits limits, Findings findings) throws Refused {
        try {
            return new DecoderChoice(file, limits, findings).choose();
        } catch (IOException broken) {
            throw Refusals.unreadable(file, broken);
        }
    }

    private Decoder choose() throws Refused, IOException {
        SongFile.checkedSize(file);
        Content content = look();
        if (content.kind() == Content.Kind.OTHER) {
            throw Refusals.notSound(file, content);
        }
        Decoder decoder = decoder(content).orElseThrow(() -> Refusals.noFrames(file, content));
        try {
            checkCost(decoder);
        } catch (Refused tooMuch) {
            decoder.close();
            throw tooMuch;
        }
        warnWhenMisnamed(content);
        return decoder;
    }

    private Content look() throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(Content.HEAD_BYTES);
            int behindTags = Mp3Edges.start(head, Integer.MAX_VALUE);
            if (behindTags == 0) {
                return Content.of(head);
            }
            in.skip(Math.max(0, behindTags - head.length));
            byte[] behind = behindTags < head.length
                    ? java.util.Arrays.copyOfRange(head, behindTags, head.length)
                    : in.readNBytes(Content.HEAD_BYTES);
            Content content = Content.of(behind);
            boolean isKnown = content.kind() == Content.Kind.FLAC || content.kind() == Content.Kind.FFMPEG;
            return isKnown ? content : new Content(Content.Kind.MP3, "MP3 sound");
        }
    }

    private Optional<? extends Decoder> decoder(Content content) throws Refused, IOException {
        return switch (content.kind()) {
            case WAV, AIFF -> raw(content);
            case FLAC -> FlacDecoder.open(file, findings);
            case OGG_VORBIS -> ogg();
            case FFMPEG, OGG_OTHER -> ffmpeg(content);
            case MP3, UNKNOWN, OTHER -> mp3(content);
        };
    }

    private Optional<? extends Decoder> raw(Content content) throws Refused, IOException {
        Optional<RawLayout> layout;
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            layout = content.kind() == Content.Kind.WAV ? WavHeader.read(in) : AiffHeader.read(in);
        } catch (EOFException cutShort) {
            return Optional.empty();
        }
        if (layout.isEmpty()) {
            return ffmpeg(new Content(content.kind(), content.says() + " of an unusual coding"));
        }
        Decoder decoder = RawDecoder.open(file, layout.get(), findings);
        return Optional.of(decoder).filter(d -> d.lengthFrames() > 0);
    }

    private Optional<Decoder> ogg() throws Refused, IOException {
        try {
            return OggDecoder.open(file, findings);
        } catch (LinkageError notHere) {
            throw Refusals.noNativeCode(file, notHere);
        }
    }

    private Optional<Decoder> ffmpeg(Content content) throws Refused, IOException {
        return new Ffmpeg(FFMPEG).open(file, content.says(), limits.mostSeconds());
    }

    private Optional<Decoder> mp3(Content content) throws Refused, IOException {
        if (Files.size(file) > WHOLE_BYTES) {
            refuseHuge(content);
        }
        byte[] bytes = Files.readAllBytes(file);
        int end = Mp3Edges.end(bytes);
        int start = Mp3Edges.start(bytes, end);
        Mp3Scan scan = Mp3Scan.of(bytes, start, end, SEARCH_BYTES);
        if (scan.first().isEmpty() && Mp3Header.isFree(bytes, start, end)) {
            throw Refusals.freeBitRate(file);
        }
        if (scan.first().isEmpty() && content.kind() == Content.Kind.UNKNOWN) {
            throw Refusals.notSound(file, content);
        }
        return Mp3Timeline.of(scan, bytes, findings).map(timeline -> new Mp3Decoder(bytes, timeline, findings));
    }

    /** Such a file is no song; its length is told from its first frame without reading it. */
    private void refuseHuge(Content content) throws Refused, IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(SEARCH_BYTES);
        }
        int start = Mp3Edges.start(head, head.length);
        Optional<Mp3Header> first =
                Mp3Scan.of(head, start, head.length, SEARCH_BYTES).first();
        if (first.isEmpty()) {
            throw Refusals.notSound(file, content);
        }
        Mp3Header header = first.get();
        double frames = (double) Files.size(file) / header.byteCount() * header.samplesPerFrame();
        double minutes = frames / header.rateHz() / 60;
        throw Refusals.tooLong(file, String.format(Locale.ROOT, "about %.0f minutes", minutes), limits.mostSeconds());
    }

    private void checkCost(Decoder decoder) throws Refused {
        SampleRate rate = decoder.rate();
        double seconds = rate.secondsAt(decoder.lengthFrames());
        if (seconds > limits.mostSeconds()) {
            throw Refusals.tooLong(file, Clock.minutesSeconds(seconds), limits.mostSeconds());
        }
        long needed = decoder.lengthFrames() * Sound.CHANNELS * Float.BYTES;
        if (needed > limits.freeBytes().getAsLong()) {
            // What is free is known only after garbage was collected.
            System.gc();
            long free = limits.freeBytes().getAsLong();
            if (needed > free) {
                throw Refusals.tooBig(file, needed, free);
            }
        }
    }

    private void warnWhenMisnamed(Content content) {
        String name = file.getFileName().toString();
        Content.Kind promised = Content.byName(name);
        if (!content.kind().keeps(promised)) {
            findings.warn(
                    "misnamed",
                    "The file's name ends in " + name.substring(name.lastIndexOf('.')) + ", but it holds "
                            + content.says() + ".",
                    "Rename it, so that other programs can play it too.");
        }
    }
}
