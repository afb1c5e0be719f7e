package roundwright.desktop.ask;

import java.util.Arrays;
import java.util.List;
import roundwright.wording.Wording;

/** The versions of the program and what each brought, in a teacher's words; the newest is the one that is running. */
public final class Versions {
    private static final Wording WORDS = Wording.of("desktop");

    private Versions() {}

    /** All of them, the newest first. */
    public static List<String> all() {
        return List.of(WORDS.say("versions").split(",\\s*"));
    }

    public static String newest() {
        return all().get(0);
    }

    /** What a version brought, sentence by sentence. */
    public static List<String> changes(String version) {
        return Arrays.asList(WORDS.say("changes." + version.replace('.', '-')).split("\\s*\\|\\s*"));
    }
}
