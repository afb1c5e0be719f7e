package roundwright.workbook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.store.KeptCourse;
import roundwright.store.Setting;

/** The next view in the making: what an edit does not touch is shared with the view before. */
final class Draft {
    private final WorkbookView before;
    private final Map<Object, KeptCourse> courses;
    private final Map<Object, Student> students;
    private final Map<Object, Setting> settings;
    private final Map<Object, Group> groups = new LinkedHashMap<>();
    private final Map<GroupId, GroupShelf> touched = new HashMap<>();

    Draft(WorkbookView before) {
        this.before = before;
        this.courses = before.coursesCopy();
        this.students = before.studentsCopy();
        this.settings = before.settingsCopy();
        before.groupsById().forEach((id, view) -> groups.put(id, view.group()));
    }

    Map<Object, KeptCourse> courses() {
        return courses;
    }

    Map<Object, Student> students() {
        return students;
    }

    Map<Object, Setting> settings() {
        return settings;
    }

    Map<Object, Group> groups() {
        return groups;
    }

    /** What is held of a group, to be changed. */
    GroupShelf group(GroupId id) {
        return touched.computeIfAbsent(id, this::copied);
    }

    private GroupShelf copied(GroupId id) {
        return before.group(id).map(view -> view.shelf().copy()).orElseGet(GroupShelf::new);
    }

    WorkbookView finished() {
        Map<GroupId, GroupView> views = new LinkedHashMap<>();
        groups.values().forEach(group -> views.put(group.id(), view(group)));
        return new WorkbookView(courses, students, settings, views);
    }

    private GroupView view(Group group) {
        return before.group(group.id())
                .filter(view -> stillRight(view, group))
                .orElseGet(() -> new GroupView(group, shelf(group.id()), students));
    }

    private GroupShelf shelf(GroupId id) {
        GroupShelf changed = touched.get(id);
        return changed != null ? changed : copied(id);
    }

    private boolean stillRight(GroupView view, Group group) {
        return !touched.containsKey(group.id())
                && view.group().equals(group)
                && view.students().stream().allMatch(student -> student.equals(students.get(student.id())));
    }
}
