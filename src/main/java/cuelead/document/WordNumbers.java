package cuelead.document;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFNumbering;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTLvl;

/** The numbers of a Word document's lists, which are not in its text: they are counted (ECMA-376, 17.9). */
final class WordNumbers {
    private static final int LEVELS = 9;

    private final XWPFNumbering numbering;
    private final Map<BigInteger, int[]> countersByList = new HashMap<>();

    WordNumbers(XWPFDocument document) {
        numbering = document.getNumbering();
    }

    /**
     * What is printed before a paragraph, with a space behind it: {@code "3. "}. Empty where it is in no list, has a
     * bullet, or has a count or a bracket of its own to begin with: then the list only numbers its lines.
     */
    String before(XWPFParagraph paragraph, String text) {
        BigInteger list = paragraph.getNumID();
        if (numbering == null || list == null || list.signum() == 0 || paragraph.getNumLevelText() == null) {
            return "";
        }
        int level = paragraph.getNumIlvl() == null ? 0 : paragraph.getNumIlvl().intValue();
        int[] counters = countersByList.computeIfAbsent(key(list), any -> new int[LEVELS]);
        counters[level] = counters[level] == 0 ? first(list, level) : counters[level] + 1;
        for (int below = level + 1; below < LEVELS; below++) {
            counters[below] = 0;
        }
        boolean isBullet = "bullet".equals(paragraph.getNumFmt());
        if (isBullet || text.isBlank() || ListNumber.hasOwn(text)) {
            return "";
        }
        return label(paragraph.getNumLevelText(), paragraph.getNumFmt(), counters) + " ";
    }

    /** Lists of one make go on counting. */
    private BigInteger key(BigInteger list) {
        BigInteger make = numbering.getAbstractNumID(list);
        return make == null ? list : make;
    }

    private int first(BigInteger list, int level) {
        XWPFAbstractNum make = numbering.getAbstractNum(key(list));
        if (make == null) {
            return 1;
        }
        for (CTLvl described : make.getCTAbstractNum().getLvlList()) {
            if (described.getIlvl().intValue() == level && described.isSetStart()) {
                return described.getStart().getVal().intValue();
            }
        }
        return 1;
    }

    private static String label(String pattern, String format, int[] counters) {
        String label = pattern;
        for (int level = 0; level < LEVELS; level++) {
            label = label.replace("%" + (level + 1), ListNumber.written(Math.max(1, counters[level]), format));
        }
        return label;
    }
}
