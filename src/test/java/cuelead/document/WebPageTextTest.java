package cuelead.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.document.DocumentText.Line;
import cuelead.report.Refused;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class WebPageTextTest {
    @Test
    void blocksBreaksAndSpaces() throws Refused {
        assertEquals(List.of("MOORING LINES", "", "1-2 Rock R,", "recover L", "", "3-4 Walk R, L"), lines("""
                        <!DOCTYPE html><html><body><h1>MOORING
                          LINES</h1><p>1-2&nbsp;Rock <b>R</b>,<br>recover  L<div>3-4 Walk R, L</div>"""));
    }

    @Test
    void onlyWhatIsSeen() throws Refused {
        assertEquals(List.of("1-2 Rock R, recover L"), lines("""
                        <html><head><title>t</title><style>p{}</style><script>var a = "1-2 Hop";</script></head><body>
                        <nav><a href="#">Home</a></nav><p style="display: none">1-2 Hop</p><p hidden>3-4 Hop</p>
                        <p>1-2 Rock R, recover L</p><form><button>Print</button></form><footer>About</footer></body>"""));
    }

    @Test
    void theMainPartIsRead() throws Refused {
        assertEquals(
                List.of("1-2 Rock R, recover L"),
                lines("<html><body><div>Menu</div><main>1-2 Rock R, recover L</main><div>More</div></body></html>"));
    }

    @Test
    void tablesAndLists() throws Refused {
        assertEquals(
                List.of("1-2\tRock R,", "\trecover L", "3-4\tWalk R, L", "", "1. Vine R", "2. Vine L", "", "5-8 Walk"),
                lines("""
                        <table><tr><td>1-2</td><td>Rock R,<br>recover L</td></tr>
                        <tr><td><p>3-4</p></td><td>Walk R, L</td></tr></table>
                        <ol><li>Vine R<li>Vine L</ol><ul><li>5-8 Walk</ul>"""));
    }

    @Test
    void preformattedLinesStay() throws Refused {
        assertEquals(
                List.of("TITLE", "1-2   Rock R", "3-4   Walk R"),
                lines("<html><body><pre>TITLE\n1-2   Rock R\n3-4   Walk R</pre>"));
    }

    @Test
    void theCharsetThatThePageNames() throws Refused {
        String page = "<html><meta charset=%s><body>\u00c9T\u00c9 \u00bd turn";
        for (String charset : List.of("utf-8", "iso-8859-1", "windows-1252")) {
            byte[] bytes = page.formatted(charset).getBytes(Charset.forName(charset));
            assertEquals(List.of("\u00c9T\u00c9 \u00bd turn"), lines(bytes));
        }
    }

    @Test
    void aPageInOneFile() throws Refused {
        assertEquals(List.of("\u00c9T\u00c9 1-2 Rock R, recover L"), lines("""
                        From: <Saved>
                        Subject: =?utf-8?Q?x?=
                        MIME-Version: 1.0
                        Content-Type: multipart/related;
                        \ttype="text/html";
                        \tboundary="----part----"

                        ------part----
                        Content-Type: text/html; charset=utf-8
                        Content-Transfer-Encoding: quoted-printable

                        <!DOCTYPE html><html><body>=C3=89T=C3=89 1-2 Rock R, re=
                        cover L</body></html>
                        ------part------
                        """.replace("\n", "\r\n")));
    }

    private static List<String> lines(String html) throws Refused {
        return lines(html.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> lines(byte[] bytes) throws Refused {
        return DocumentFile.read("x.html", bytes).lines().stream()
                .map(Line::text)
                .toList();
    }
}
