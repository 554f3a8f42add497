package cuelead.output;

import cuelead.report.Refused;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lwjgl.openal.ALC10;
import org.lwjgl.openal.ALC11;
import org.lwjgl.openal.ALUtil;

/** A sound device or a microphone by the name that its system gives it. */
public record DeviceName(String text) {
    /** What a device does, and what it is called. */
    public enum Kind {
        SOUND_DEVICE("sound device"),
        MICROPHONE("microphone");

        private final String told;

        Kind(String told) {
            this.told = told;
        }
    }

    private static final String LIBRARY_PREFIX = "OpenAL Soft on ";

    public DeviceName {
        Objects.requireNonNull(text);
    }

    /** The devices that are there now, in the system's order; none when sound cannot be used at all. */
    public static List<DeviceName> all() {
        return all(ALC11.ALC_ALL_DEVICES_SPECIFIER);
    }

    /** The microphones that are there now, in the system's order. */
    public static List<DeviceName> microphones() {
        return all(ALC11.ALC_CAPTURE_DEVICE_SPECIFIER);
    }

    private static List<DeviceName> all(int kind) {
        try {
            QuietLibrary.ask();
            // the library gives its own list, which the next question changes
            synchronized (DeviceName.class) {
                List<String> names = ALUtil.getStringList(0, kind);
                return names == null
                        ? List.of()
                        : names.stream().map(DeviceName::new).toList();
            }
        } catch (LinkageError noLibrary) {
            return List.of();
        }
    }

    /** The one that is taken where none is named, as far as the system says. */
    public static Optional<DeviceName> usual() {
        return usual(ALC11.ALC_DEFAULT_ALL_DEVICES_SPECIFIER);
    }

    /** The microphone that is taken where none is named, as far as the system says. */
    public static Optional<DeviceName> usualMicrophone() {
        return usual(ALC11.ALC_CAPTURE_DEFAULT_DEVICE_SPECIFIER);
    }

    private static Optional<DeviceName> usual(int kind) {
        try {
            QuietLibrary.ask();
            synchronized (DeviceName.class) {
                return Optional.ofNullable(ALC10.alcGetString(0, kind))
                        .filter(name -> !name.isEmpty())
                        .map(DeviceName::new);
            }
        } catch (LinkageError noLibrary) {
            return Optional.empty();
        }
    }

    /**
     * The device that a user means by its name or by a part that no other name has. Capitals, spaces, underscores and
     * hyphens make no difference: systems write them as they like.
     *
     * @param there the devices to choose from
     * @param kind  what they are
     * @throws Refused when none or several are meant, naming them
     */
    public static DeviceName meantBy(String part, List<DeviceName> there, Kind kind) throws Refused {
        for (DeviceName name : there) {
            if (part.equals(name.text()) || part.equals(name.told())) {
                return name;
            }
        }
        String wanted = plain(part);
        for (DeviceName name : there) {
            if (!wanted.isEmpty() && (wanted.equals(plain(name.text())) || wanted.equals(plain(name.told())))) {
                return name;
            }
        }
        List<DeviceName> meant = there.stream()
                .filter(name -> !wanted.isEmpty() && plain(name.told()).contains(wanted))
                .toList();
        if (meant.isEmpty()) {
            throw new DeviceName(part).refusal(there, kind);
        }
        if (meant.size() > 1) {
            throw new Refused("\"" + part + "\" may be " + quoted(meant, " or ") + "; write more of the name.");
        }
        return meant.get(0);
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }

    /** Whether it hears what the computer itself plays, by the names that sound servers give such sources. */
    public boolean isOwnSound() {
        return told().toLowerCase(Locale.ROOT).startsWith("monitor of ");
    }

    /** The name as users know it, without the library's own words before it. */
    public String told() {
        return text.startsWith(LIBRARY_PREFIX) ? text.substring(LIBRARY_PREFIX.length()) : text;
    }

    private static String quoted(List<DeviceName> names, String between) {
        return names.stream().map(name -> "\"" + name.told() + "\"").collect(Collectors.joining(between));
    }

    /** Why the device of this name could not be opened. */
    Refused refusal(List<DeviceName> there, Kind kind) {
        if (there.contains(this)) {
            return new Refused("The " + kind.told + " \"" + told()
                    + "\" could not be opened; another program may be using it, so close that or choose another.");
        }
        if (there.isEmpty()) {
            return new Refused("There is no " + kind.told + " \"" + told()
                    + "\", and no other; connect it, or leave its name out.");
        }
        return new Refused("There is no " + kind.told + " \"" + told() + "\"; connect it, or choose from "
                + quoted(there, ", ") + ".");
    }
}
