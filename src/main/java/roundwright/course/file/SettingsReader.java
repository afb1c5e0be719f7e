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
import roundwright.notation.Severity;
import roundwright.notation.Span;
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
        Optional<Setting> tension = value("tension").or(() -> value("gauge"));
        if (tension.isEmpty()) {
            problems.remark("missing-tension", section.heading());
        }
        return new CourseSettings(
                value("hook").map(setting -> setting.value().text()),
                value("yarn").map(setting -> setting.value().text()),
                tension.flatMap(this::tension),
                session(),
                pace(),
                words());
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

    private void missing(String key) {
        if (section.setting(key).isEmpty()) {
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
            unreadable("session-unreadable", setting.get());
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
            unreadable("pace-unreadable", setting.get());
        }
        return pace;
    }

    private void unreadable(String key, Setting setting) {
        Span at = setting.value().span();
        problems.mendable(
                Severity.ERROR, key, at, Optional.empty(), setting.value().text());
    }

    private List<Entry> words() {
        return words(section, Keys.COURSE);
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
