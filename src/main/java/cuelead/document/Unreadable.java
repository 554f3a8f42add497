package cuelead.document;

import cuelead.report.Refused;

/** Why a document cannot be read, and what to try, in one sentence each. */
final class Unreadable {
    private static final int BYTES_IN_KB = 1024;

    private Unreadable() {}

    static Refused tooLarge(String name, long bytes, long most) {
        return new Refused(name + " is too large for a step sheet (" + bytes / BYTES_IN_KB + " kB, at most "
                + most / BYTES_IN_KB + "); is it the right file?");
    }

    static Refused tooManyPages(String name, int pages, int most) {
        return new Refused(name + " has " + pages + " pages, at most " + most
                + " are read; save the pages of the dance as a file of their own.");
    }

    static Refused locked(String name) {
        return new Refused(name + " is locked with a password; open it in the program that made it, and save it"
                + " without a password or copy its text into a text file.");
    }

    static Refused damaged(String name, String what, Throwable cause) {
        return new Refused(
                name + " is damaged, so this " + what
                        + " cannot be opened; get it again, or copy its text into a text file.",
                cause);
    }

    static Refused picturesOnly(String name) {
        return new Refused(name + " holds pictures of pages and no text (a scan?); run text recognition (OCR) over it,"
                + " or type the sheet into a text file.");
    }

    static Refused noLetters(String name) {
        return new Refused(name + " does not tell which letters its shapes stand for, so its text cannot be read;"
                + " print it, scan it with text recognition (OCR), or type the sheet into a text file.");
    }

    static Refused noText(String name) {
        return new Refused(name + " holds no text; if it holds a picture of the sheet, type it into a text file.");
    }

    static Refused tooOld(String name, Throwable cause) {
        return new Refused(
                name + " is from a Word older than 97; open it in a newer one and save it as .docx, or copy its text"
                        + " into a text file.",
                cause);
    }

    static Refused notWord(String name) {
        return new Refused(name + " is an Office file, but no Word document; copy the sheet's text into a text file.");
    }

    static Refused kind(String name, DocumentKind kind) {
        return new Refused(name
                + switch (kind) {
                    case PICTURE ->
                        " is a picture, and pictures cannot be read; run text recognition (OCR) over it, or type the"
                                + " sheet into a text file.";
                    case RICH_TEXT ->
                        " is a rich-text file (RTF), which cannot be read; save it as Word (.docx), PDF or text.";
                    case OPEN_DOCUMENT ->
                        " is an OpenDocument file, which cannot be read; save it as Word (.docx), PDF or text.";
                    case SAFARI_ARCHIVE ->
                        " is a web archive, which cannot be read; save the page as HTML, or copy its text into a text"
                                + " file.";
                    default -> " is an archive and no Word document; unpack it and name the step sheet in it.";
                });
    }
}
