package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DropTest {
    @TempDir
    private Path temp;

    private final List<String> taken = new ArrayList<>();
    private final Drop drop = new Drop(new Drop.Taker() {
        @Override
        public void sheet(Path file) {
            taken.add("sheet " + file);
        }

        @Override
        public void song(Path file) {
            taken.add("song " + file);
        }

        @Override
        public void text(String text) {
            taken.add("text " + text);
        }

        @Override
        public void told(String sentence) {
            taken.add(sentence);
        }
    });

    private static Transferable of(DataFlavor flavor, Object data) {
        return new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {flavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor other) {
                return flavor.equals(other);
            }

            @Override
            public Object getTransferData(DataFlavor other) {
                return data;
            }
        };
    }

    @Test
    void songsAreToldFromSheetsByTheirNames() {
        assertTrue(drop.take(of(DataFlavor.javaFileListFlavor, List.of(new File("a.TXT"), new File("b.MP3")))));
        assertEquals(List.of("sheet a.TXT", "song b.MP3"), taken);
    }

    @Test
    void textIsASheet() {
        assertTrue(drop.take(new StringSelection("1-2 Step")));
        assertEquals(List.of("text 1-2 Step"), taken);
    }

    @Test
    void anythingElseIsToldInASentence() {
        assertFalse(drop.take(of(DataFlavor.imageFlavor, "")));
        assertEquals(1, taken.size());
        assertTrue(taken.get(0).endsWith("."), taken.toString());
    }

    @Test
    void noPastedSheetTakesThePlaceOfAnother() throws Exception {
        PastedSheets pasted = new PastedSheets(temp.resolve("pasted"));
        Path first = pasted.keep("one");
        Path second = pasted.keep("two");
        assertEquals("one", Files.readString(first));
        assertEquals("two", Files.readString(second));
    }

    @Test
    void whereItCannotBeKeptOneSentenceSaysSo() throws Exception {
        Path file = Files.writeString(temp.resolve("file"), "");
        assertThrows(Refused.class, () -> new PastedSheets(file.resolve("pasted")).keep("one"));
    }
}
