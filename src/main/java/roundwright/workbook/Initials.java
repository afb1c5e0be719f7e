package roundwright.workbook;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.group.Student;
import roundwright.group.StudentId;

/** What students are called where only initials may go: "Ines Kowal" is "I. K.", a second one "I. K. 2". */
final class Initials {
    private Initials() {}

    static Map<StudentId, String> of(Collection<Student> students) {
        Map<StudentId, String> called = new LinkedHashMap<>();
        Map<String, Integer> taken = new HashMap<>();
        students.stream()
                .sorted(Comparator.comparing(student -> student.id().value()))
                .forEach(student -> {
                    String initials = initials(student.name());
                    int place = taken.merge(initials, 1, Integer::sum);
                    called.put(student.id(), place == 1 ? initials : initials + " " + place);
                });
        return called;
    }

    private static String initials(String name) {
        String initials = Stream.of(name.split("[^\\p{L}\\p{N}\\p{M}']+"))
                .filter(word -> !word.isEmpty())
                .map(word -> new String(Character.toChars(word.codePointAt(0))).toUpperCase(Locale.ROOT) + ".")
                .collect(Collectors.joining(" "));
        return initials.isEmpty() ? "?" : initials;
    }
}
