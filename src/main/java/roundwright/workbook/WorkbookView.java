package roundwright.workbook;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.KeptCourse;
import roundwright.store.Setting;

/** Everything in the file as it stood at one moment. Never changes, and may be read from any thread. */
public final class WorkbookView {
    static final WorkbookView EMPTY = new WorkbookView(Map.of(), Map.of(), Map.of(), Map.of());

    private final Map<Object, KeptCourse> courses;
    private final Map<Object, Student> students;
    private final Map<Object, Setting> settings;
    private final Map<GroupId, GroupView> groups;

    WorkbookView(
            Map<Object, KeptCourse> courses,
            Map<Object, Student> students,
            Map<Object, Setting> settings,
            Map<GroupId, GroupView> groups) {
        this.courses = courses;
        this.students = students;
        this.settings = settings;
        this.groups = groups;
    }

    /** The courses, in the order in which they came. */
    public List<KeptCourse> courses() {
        return courses.values().stream()
                .sorted(Comparator.comparingLong(course -> course.id().value()))
                .toList();
    }

    public Optional<KeptCourse> course(CourseId id) {
        return Optional.ofNullable(courses.get(id));
    }

    /** The groups, in the order in which they came. */
    public List<GroupView> groups() {
        return groups.values().stream()
                .sorted(Comparator.comparingLong(view -> view.id().value()))
                .toList();
    }

    /** The groups that take a course. */
    public List<GroupView> groups(CourseId course) {
        return groups().stream()
                .filter(view -> view.group().course().equals(course))
                .toList();
    }

    public Optional<GroupView> group(GroupId id) {
        return Optional.ofNullable(groups.get(id));
    }

    public Optional<Student> student(StudentId id) {
        return Optional.ofNullable(students.get(id));
    }

    /** What the file remembers under a name, such as the group that was last looked at. */
    public Optional<String> setting(String name) {
        return Optional.ofNullable(settings.get(name)).map(Setting::value);
    }

    /** Whether there is nothing in it that a person put there. */
    public boolean empty() {
        return courses.isEmpty() && groups.isEmpty() && students.isEmpty();
    }

    /** Whether another view holds the same, down to the last value. */
    boolean sameAs(WorkbookView other) {
        return courses.equals(other.courses)
                && students.equals(other.students)
                && settings.equals(other.settings)
                && groups.keySet().equals(other.groups.keySet())
                && groups.values().stream().allMatch(group -> group.sameAs(other.groups.get(group.id())));
    }

    Optional<Setting> settingValue(String name) {
        return Optional.ofNullable(settings.get(name));
    }

    Map<Object, KeptCourse> coursesCopy() {
        return new LinkedHashMap<>(courses);
    }

    Map<Object, Student> studentsCopy() {
        return new LinkedHashMap<>(students);
    }

    Map<Object, Setting> settingsCopy() {
        return new LinkedHashMap<>(settings);
    }

    Map<GroupId, GroupView> groupsById() {
        return groups;
    }
}
