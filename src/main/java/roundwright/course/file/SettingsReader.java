package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import roundwright.course.CourseSettings;
import roundwright.course.CourseSettings.Tension;
import roundwright.course.Lesson.Entry;
import roundwright.notation.Terms;

/** Reads the settings below the course's name. */
final class SettingsReader {
    private final Section section;
    private final Problems problems;

    SettingsReader(Section section, Problems problems) {
        this.section = section;
        this.problems = problems;
    }

    CourseSettings read() {
        Keys.COURSE.check(section, problems);
        missing("terms");
        missing("hook");
        missing("yarn");
        Optional<Setting> tension = section.setting("tension").or(() -> section.setting("gauge"));
        if (tension.isEmpty()) {
            missing("tension");
        }
        return new CourseSettings(
                text("hook"),
                text("yarn"),
                tension.filter(setting -> !setting.value().isBlank()).flatMap(this::tension),
                session(),
                pace(),
                words(section, Keys.COURSE));
    }

    /** The terms that the file states; empty where it does not, or states others than UK or US. */
    Optional<Terms> terms() {
        Optional<Setting> setting = value("terms");
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        String written = setting.get().value().text().toUpperCase(Locale.ROOT).replaceAll("[.\\s]", "");
        if (written.matches("(?:UK|GB|BRITISH)(?:TERMS)?")) {
            return Optional.of(Terms.UK);
        }
        if (written.matches("(?:USA?|AMERICAN)(?:TERMS)?")) {
            return Optional.of(Terms.US);
        }
        Written value = setting.get().value();
        problems.error("terms-unknown", value.span(), value.text());
        return Optional.empty();
    }

    private Optional<Setting> value(String key) {
        return section.setting(key).filter(setting -> !setting.value().isBlank());
    }

    /** The value, or the values of the list below the key. */
    private Optional<String> text(String key) {
        List<String> values = section.setting(key).stream()
                .flatMap(setting -> Values.of(section, setting).stream())
                .map(Written::text)
                .toList();
        return values.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", values));
    }

    /** A file without a name has more pressing trouble. */
    private void missing(String key) {
        if (section.setting(key).isEmpty() && !section.title().isBlank()) {
            problems.remark("missing-" + key, section.heading());
        }
    }

    private Optional<Tension> tension(Setting setting) {
        Optional<Tension> tension = Amounts.tension(setting.value().text());
        if (tension.isEmpty()) {
            problems.error(
                    "tension-unreadable",
                    setting.value().span(),
                    setting.value().text(),
                    setting.key());
        }
        return tension;
    }

    private int session() {
        Optional<Setting> setting = value("session");
        if (setting.isEmpty()) {
            missing("session");
            return CourseSettings.USUAL_SESSION_MINUTES;
        }
        OptionalInt minutes = Amounts.minutes(setting.get().value().text());
        if (minutes.isEmpty()) {
            Written value = setting.get().value();
            problems.error("session-unreadable", value.span(), value.text());
        }
        return minutes.orElse(CourseSettings.USUAL_SESSION_MINUTES);
    }

    private OptionalDouble pace() {
        Optional<Setting> setting = value("pace");
        if (setting.isEmpty()) {
            missing("pace");
            return OptionalDouble.empty();
        }
        OptionalDouble pace = Amounts.pace(setting.get().value().text());
        if (pace.isEmpty()) {
            Written value = setting.get().value();
            problems.error("pace-unreadable", value.span(), value.text());
        }
        return pace;
    }

    /** What is said to people under the keys that may come more than once. */
    static List<Entry> words(Section section, Keys keys) {
        List<Entry> words = new ArrayList<>();
        for (Setting setting : section.settings()) {
            if (keys.often().contains(setting.key())) {
                Values.of(section, setting).forEach(value -> words.add(new Entry(setting.key(), value.text())));
            }
        }
        return words;
    }
}
