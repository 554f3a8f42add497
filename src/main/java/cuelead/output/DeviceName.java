package cuelead.output;

import cuelead.report.Refused;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.lwjgl.openal.ALC11;
import org.lwjgl.openal.ALUtil;

/** A sound device by the name that its system gives it. */
public record DeviceName(String text) {
    public DeviceName {
        Objects.requireNonNull(text);
    }

    /** The devices that are there now, in the system's order; none when sound cannot be used at all. */
    public static List<DeviceName> all() {
        try {
            QuietLibrary.ask();
            List<String> names = ALUtil.getStringList(0, ALC11.ALC_ALL_DEVICES_SPECIFIER);
            return names == null
                    ? List.of()
                    : names.stream().map(DeviceName::new).toList();
        } catch (LinkageError noLibrary) {
            return List.of();
        }
    }

    /** Why the device of this name could not be opened. */
    Refused refusal(List<DeviceName> there) {
        if (there.contains(this)) {
            return new Refused(
                    "The sound device \"" + text
                            + "\" could not be opened; another program may be using it, so close that or choose another device.");
        }
        if (there.isEmpty()) {
            return new Refused(
                    "There is no sound device \"" + text + "\", and no other; connect it, or leave its name out.");
        }
        return new Refused(there.stream()
                .map(name -> "\"" + name.text() + "\"")
                .collect(Collectors.joining(
                        ", ", "There is no sound device \"" + text + "\"; connect it, or choose from ", ".")));
    }
}
