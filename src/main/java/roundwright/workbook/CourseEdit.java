package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import roundwright.group.CourseId;
import roundwright.store.KeptCourse;
import roundwright.wording.Wording;

/** What is done to courses. */
public sealed interface CourseEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /**
     * A new course.
     *
     * @param id from {@link Workbook#newCourse()}
     * @param name what it is called in lists
     * @param text its course file, whole
     */
    record AddCourse(CourseId id, String name, String text) implements CourseEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.add-course", name);
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return List.of(Write.insert(Kind.COURSE, new KeptCourse(id, name, text)));
        }
    }

    /**
     * Another text, and with it perhaps another name, for a course. Where the text calls a part otherwise, its counts and notes
     * go with it.
     */
    record ReplaceCourseText(CourseId id, String newName, String text) implements CourseEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.replace-course-text", newName);
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            KeptCourse before = Lookup.course(view, id);
            List<Write<?>> writes = new ArrayList<>();
            writes.add(Write.replace(Kind.COURSE, before, new KeptCourse(id, newName, text)));
            Map<String, String> renamed = RenamedParts.between(before.text(), text);
            if (!renamed.isEmpty()) {
                view.groups(id).forEach(group -> writes.addAll(RenamedParts.writes(group, renamed)));
            }
            return writes;
        }
    }

    /** A course goes, with the groups that took it. */
    record RemoveCourse(CourseId id) implements CourseEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.remove-course", Lookup.course(view, id).name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            List<Write<?>> writes = new ArrayList<>();
            view.groups(id).forEach(group -> writes.addAll(Removal.of(view, group)));
            writes.add(Write.delete(Kind.COURSE, Lookup.course(view, id)));
            return writes;
        }
    }
}
