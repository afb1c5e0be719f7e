package roundwright.group.counts;

import java.util.LinkedHashMap;
import java.util.Map;
import roundwright.group.RoundPlace;
import roundwright.group.messages.Folding;

/** Gathers what a table speaks of and nobody knows. */
final class UnknownsFound {
    private final Map<String, Integer> students = new LinkedHashMap<>();
    private final Map<String, String> guessed = new LinkedHashMap<>();
    private final Map<String, Integer> parts = new LinkedHashMap<>();
    private final Map<RoundPlace, Integer> places = new LinkedHashMap<>();
    private final Map<String, Integer> courses = new LinkedHashMap<>();
    private int withoutPart;

    void student(String written, int counts) {
        students.merge(written, counts, Integer::sum);
    }

    /** Notes how a name was taken, where its letters are not the student's. */
    void taken(String written, String student) {
        if (!written.equals(student)
                && !Folding.fold(written).strip().equals(Folding.fold(student).strip())) {
            guessed.putIfAbsent(written, student);
        }
    }

    void part(String written) {
        if (written.isEmpty()) {
            withoutPart++;
        } else {
            parts.merge(written, 1, Integer::sum);
        }
    }

    void place(RoundPlace place) {
        places.merge(place, 1, Integer::sum);
    }

    void course(String written) {
        courses.merge(written, 1, Integer::sum);
    }

    Unknowns found() {
        return new Unknowns(students, guessed, parts, places, withoutPart, courses);
    }
}
