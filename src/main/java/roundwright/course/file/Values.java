package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;

/** What a section says under a key: the value of each item of it, or the list that stands below one without a value. */
final class Values {
    private Values() {}

    static List<Written> of(Section section, String key) {
        return section.settings().stream()
                .filter(setting -> setting.key().equals(key))
                .flatMap(setting -> of(section, setting).stream())
                .toList();
    }

    static List<Written> of(Section section, Setting setting) {
        if (!setting.value().isBlank()) {
            return List.of(setting.value());
        }
        List<Written> below = new ArrayList<>();
        int from = section.entries().indexOf(setting.entry()) + 1;
        for (Entry entry : section.entries().subList(from, section.entries().size())) {
            if (!entry.item() || entry.depth() <= setting.entry().depth()) {
                break;
            }
            below.add(entry.written());
        }
        return below;
    }
}
