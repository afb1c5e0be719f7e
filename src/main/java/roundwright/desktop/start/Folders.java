package roundwright.desktop.start;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where the program keeps what is its own, by the conventions of the system, or all under one folder where that was asked for.
 *
 * @param settings how the window looks
 * @param data the teacher's file
 * @param backups copies of it
 * @param cache what can be made anew at any time
 */
public record Folders(Path settings, Path data, Path backups, Path cache) {
    private static final String NAME = "roundwright";

    /** Everything under one folder. */
    public static Folders under(Path home) {
        return new Folders(
                home.resolve("settings"), home.resolve("data"), home.resolve("backups"), home.resolve("cache"));
    }

    /**
     * By the conventions of a system.
     *
     * @param system the name of the operating system, as Java gives it
     * @param home the person's home folder
     * @param environment the environment's variables
     */
    public static Folders usual(String system, Path home, Map<String, String> environment) {
        if (system.startsWith("Windows")) {
            Path roaming = variable(environment, "APPDATA").orElse(home.resolve("AppData/Roaming"));
            Path local = variable(environment, "LOCALAPPDATA").orElse(home.resolve("AppData/Local"));
            return of(roaming.resolve("Roundwright"), local.resolve("Roundwright"), local.resolve("Roundwright/cache"));
        }
        if (system.startsWith("Mac")) {
            Path support = home.resolve("Library/Application Support/Roundwright");
            return of(support.resolve("settings"), support, home.resolve("Library/Caches/Roundwright"));
        }
        Path config = variable(environment, "XDG_CONFIG_HOME").orElse(home.resolve(".config"));
        Path data = variable(environment, "XDG_DATA_HOME").orElse(home.resolve(".local/share"));
        Path cache = variable(environment, "XDG_CACHE_HOME").orElse(home.resolve(".cache"));
        return of(config.resolve(NAME), data.resolve(NAME), cache.resolve(NAME));
    }

    private static Folders of(Path settings, Path data, Path cache) {
        return new Folders(settings, data, data.resolve("backups"), cache);
    }

    /** A relative path in one of these variables is to be passed over, says the convention. */
    private static Optional<Path> variable(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(value -> !value.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }

    /** The teacher's file where none is named. */
    public Path file() {
        return data.resolve("courses.db");
    }
}
