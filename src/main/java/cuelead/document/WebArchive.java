package cuelead.document;

import cuelead.report.Refused;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a web page that was saved as one file: MIME parts (RFC 2046, 5.1), of which the first that is HTML is
 * read; its letters are written as quoted-printable or base64 (RFC 2045, 6.7 and 6.8).
 */
final class WebArchive {
    private static final Pattern BOUNDARY =
            Pattern.compile("boundary\\s*=\\s*(?:\"([^\"]+)\"|([^\\s;]+))", Pattern.CASE_INSENSITIVE);
    private static final Pattern CHARSET = Pattern.compile("charset\\s*=\\s*\"?([\\w.:-]+)", Pattern.CASE_INSENSITIVE);
    private static final int RADIX = 16;

    private WebArchive() {}

    static List<String> lines(String name, byte[] bytes) throws Refused {
        String whole = new String(bytes, StandardCharsets.ISO_8859_1).replace("\r\n", "\n");
        Matcher boundary = BOUNDARY.matcher(whole);
        if (boundary.find()) {
            String mark = boundary.group(1) == null ? boundary.group(2) : boundary.group(1);
            String[] parts = whole.split(Pattern.quote("--" + mark));
            Optional<String> page = Arrays.stream(parts)
                    .skip(1)
                    .flatMap(part -> page(part).stream())
                    .findFirst();
            if (page.isPresent()) {
                return WebPageText.lines(page.get());
            }
        }
        throw Unreadable.noText(name);
    }

    private static Optional<String> page(String part) {
        int end = part.strip().isEmpty() ? -1 : part.indexOf("\n\n", 1);
        if (end < 0) {
            return Optional.empty();
        }
        String head = part.substring(0, end).toLowerCase(Locale.ROOT);
        if (!head.contains("text/html")) {
            return Optional.empty();
        }
        Matcher charset = CHARSET.matcher(head);
        return Optional.of(decode(content(head, part.substring(end + 2)), charset.find() ? charset.group(1) : "utf-8"));
    }

    private static byte[] content(String head, String body) {
        if (head.contains("quoted-printable")) {
            return unquoted(body);
        }
        return head.contains("base64")
                ? Base64.getMimeDecoder().decode(body.strip())
                : body.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] unquoted(String body) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        String joined = body.replaceAll("=[ \t]*\n", "");
        for (int i = 0; i < joined.length(); i++) {
            boolean isQuoted = joined.charAt(i) == '='
                    && i + 2 < joined.length()
                    && Character.digit(joined.charAt(i + 1), RADIX) >= 0
                    && Character.digit(joined.charAt(i + 2), RADIX) >= 0;
            bytes.write(isQuoted ? Integer.parseInt(joined.substring(i + 1, i + 3), RADIX) : joined.charAt(i));
            i += isQuoted ? 2 : 0;
        }
        return bytes.toByteArray();
    }

    /** In the charset of that name, or as the bytes look where there is none such or they are no such text. */
    static String decode(byte[] bytes, String charset) {
        try {
            boolean isUnicode = charset.toLowerCase(Locale.ROOT).startsWith("utf");
            return isUnicode ? PlainText.decode(bytes) : new String(bytes, Charset.forName(charset));
        } catch (IllegalArgumentException unknown) {
            return PlainText.decode(bytes);
        }
    }
}
