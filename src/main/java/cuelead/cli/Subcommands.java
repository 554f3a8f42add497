package cuelead.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;

/** The program's commands. Each is made when it is needed, for to make one takes some hundredths of a second. */
final class Subcommands {
    /** Those that are soon heard. */
    private static final Set<String> PLAYED = Set.of("play", "walkthrough");

    private final Map<String, Function<Surroundings, Object>> makers = new LinkedHashMap<>();
    private final Surroundings surroundings;

    Subcommands(Surroundings surroundings) {
        this.surroundings = surroundings;
        makers.put("play", PlayCommand::new);
        makers.put("walkthrough", WalkthroughCommand::new);
        makers.put("render", RenderCommand::new);
        makers.put("plan", PlanCommand::new);
        makers.put("read", ReadCommand::new);
        makers.put("check", CheckCommand::new);
        makers.put("stretch", StretchCommand::new);
        makers.put("say", SayCommand::new);
        makers.put("record", RecordCommand::new);
        makers.put("rehearse", RehearseCommand::new);
        makers.put("review", ReviewCommand::new);
        makers.put("beats", BeatsCommand::new);
        makers.put("devices", DevicesCommand::new);
        makers.put("align", AlignCommand::new);
        makers.put("help", none -> new CommandLine.HelpCommand());
    }

    /** Whether the arguments ask for what is played live. */
    static boolean arePlayed(String... arguments) {
        return arguments.length > 0 && PLAYED.contains(arguments[0]);
    }

    /** The one that the arguments begin with; all of them where they begin with none. */
    List<Object> neededBy(String... arguments) {
        if (arguments.length > 0 && makers.containsKey(arguments[0]) && !arguments[0].equals("help")) {
            return List.of(makers.get(arguments[0]).apply(surroundings));
        }
        return makers.values().stream().map(maker -> maker.apply(surroundings)).toList();
    }
}
