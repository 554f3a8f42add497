package cuelead.practice;

import java.nio.file.Path;

/**
 * The folders that the program may use.
 *
 * @param cache   for what was measured about songs and for spoken words; may not exist yet; nothing in it is missed
 *                when it is lost
 * @param working the folder in which the user is
 */
public record Places(Path cache, Path working) {}
