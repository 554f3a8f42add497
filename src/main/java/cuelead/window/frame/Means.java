package cuelead.window.frame;

import cuelead.practice.Places;
import cuelead.steer.SoundDevices;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window works with.
 *
 * @param places  of the practice
 * @param kept    the folder for what the user has made, such as edited sheets and recordings; may not exist yet
 * @param devices what sound can come from
 * @param demo    the demo's sheet, where it is there
 */
public record Means(Places places, Path kept, SoundDevices devices, Optional<Path> demo) {
    /** The folder for sheets that were pasted, and for copies that have the user's changes. */
    public Path sheets() {
        return kept.resolve("sheets");
    }
}
