package cuelead.window.frame;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A dance that lay on the stand.
 *
 * @param song the one that the user chose; empty = the one that the sheet names, if any
 */
public record Recent(String title, Path sheet, Optional<Path> song) {}
