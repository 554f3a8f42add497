package cuelead.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.document.DocumentText.Line;
import cuelead.report.Refused;
import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTLvl;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STNumberFormat;

class WordTextTest {
    private static final List<String> LINES = List.of("MOORING LINES", "1-2\tStep R to side, step L behind R");

    @Test
    void paragraphsAndRowsOfTables() throws Refused {
        assertEquals(LINES, lines(Documents.word(LINES)));
    }

    @Test
    void aSoftBreakPartsLinesAndATabStays() throws Exception {
        XWPFDocument document = new XWPFDocument();
        XWPFParagraph paragraph = document.createParagraph();
        XWPFRun run = paragraph.createRun();
        run.setText("1-2");
        run.addTab();
        paragraph.createRun().setText("Rock R, recover L");
        run = paragraph.createRun();
        run.addBreak();
        paragraph.createRun().setText("3-4 Walk\u00a0R, L");
        assertEquals(List.of("1-2\tRock R, recover L", "3-4 Walk R, L"), lines(bytes(document)));
    }

    @Test
    void numbersOfListsAreWrittenUnlessTheItemHasItsOwn() throws Exception {
        XWPFDocument document = new XWPFDocument();
        BigInteger list = numbered(document);
        for (String item : List.of("Vine R, touch", "Vine L, touch", "5-8 Walk R, L, R, L", "Clap")) {
            XWPFParagraph paragraph = document.createParagraph();
            paragraph.setNumID(list);
            paragraph.setNumILvl(BigInteger.ZERO);
            paragraph.createRun().setText(item);
        }
        assertEquals(
                List.of("1) Vine R, touch", "2) Vine L, touch", "5-8 Walk R, L, R, L", "4) Clap"),
                lines(bytes(document)));
    }

    private static BigInteger numbered(XWPFDocument document) {
        CTAbstractNum make = CTAbstractNum.Factory.newInstance();
        make.setAbstractNumId(BigInteger.ZERO);
        CTLvl level = make.addNewLvl();
        level.setIlvl(BigInteger.ZERO);
        level.addNewStart().setVal(BigInteger.ONE);
        level.addNewNumFmt().setVal(STNumberFormat.DECIMAL);
        level.addNewLvlText().setVal("%1)");
        BigInteger id = document.createNumbering().addAbstractNum(new XWPFAbstractNum(make));
        return document.getNumbering().addNum(id);
    }

    @Test
    void countsAndStepsInTwoCellsStandBesideEachOther() throws Exception {
        XWPFDocument document = new XWPFDocument();
        XWPFTable table = document.createTable(1, 2);
        fill(table, 0, "1-2", "3-4");
        fill(table, 1, "Rock R, recover L", "Walk R, L");
        assertEquals(List.of("1-2\tRock R, recover L", "3-4\tWalk R, L"), lines(bytes(document)));
    }

    @Test
    void twoCellsFullOfCountsAreTwoColumnsOfThePage() throws Exception {
        XWPFDocument document = new XWPFDocument();
        XWPFTable table = document.createTable(1, 2);
        String[] left = {"1-2 Rock R, recover L", "3-4 Walk R, L", "5-8 Vine R, touch"};
        String[] right = {"1-2 Rock L, recover R", "3-4 Walk L, R", "5-8 Vine L, touch"};
        fill(table, 0, left);
        fill(table, 1, right);
        assertEquals(List.of(left[0], left[1], left[2], right[0], right[1], right[2]), lines(bytes(document)));
    }

    private static void fill(XWPFTable table, int column, String... lines) {
        var cell = table.getRow(0).getCell(column);
        cell.removeParagraph(0);
        for (String line : lines) {
            cell.addParagraph().createRun().setText(line);
        }
    }

    @Test
    void aPasswordIsSaid() throws Exception {
        byte[] open = Documents.word(LINES);
        byte[] locked = Documents.written(out -> {
            try (POIFSFileSystem wrapping = new POIFSFileSystem()) {
                Encryptor encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
                encryptor.confirmPassword("secret");
                try (OPCPackage document = OPCPackage.open(new ByteArrayInputStream(open));
                        OutputStream inside = encryptor.getDataStream(wrapping)) {
                    document.save(inside);
                }
                wrapping.writeFilesystem(out);
            } catch (GeneralSecurityException | InvalidFormatException impossible) {
                throw new IllegalStateException(impossible);
            }
        });
        assertTrue(refusal(locked).contains("locked with a password"));
    }

    @Test
    void aBrokenDocumentIsRefused() {
        byte[] whole = Documents.word(LINES);
        for (int length : new int[] {whole.length / 3, whole.length / 2, whole.length - 40}) {
            String sentence = refusal(Arrays.copyOf(whole, length));
            assertTrue(sentence.startsWith("x.docx is "), sentence);
        }
    }

    @Test
    void aTableOfNumbersInTheOldWrappingIsNoDocument() throws Exception {
        byte[] other = Documents.written(out -> {
            try (POIFSFileSystem wrapping = new POIFSFileSystem()) {
                wrapping.createDocument(new ByteArrayInputStream(new byte[5000]), "Workbook");
                wrapping.writeFilesystem(out);
            }
        });
        assertTrue(refusal(other).contains("no Word document"));
        assertTrue(refusal(Arrays.copyOf(other, 900)).contains("damaged"));
    }

    private static byte[] bytes(XWPFDocument document) throws Exception {
        try (document) {
            return Documents.written(document::write);
        }
    }

    private static List<String> lines(byte[] bytes) throws Refused {
        return DocumentFile.read("x.docx", bytes).lines().stream()
                .map(Line::text)
                .toList();
    }

    private static String refusal(byte[] bytes) {
        return assertThrows(Refused.class, () -> DocumentFile.read("x.docx", bytes))
                .getMessage();
    }
}
