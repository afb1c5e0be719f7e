package roundwright.workbook;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import roundwright.group.Enrolment;
import roundwright.group.Group;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.store.FiledReport;
import roundwright.store.KeptCourse;
import roundwright.store.Setting;
import roundwright.store.Shelf;
import roundwright.store.Store;

/**
 * A kind of value that the file keeps: where it stands on the disk, where in memory, and what its change is called.
 *
 * @param <V> the kind of value
 * @param shelf its place on the disk
 * @param places its place in memory: the map that holds a value of this kind
 * @param key its identity
 * @param change what listeners are told
 */
record Kind<V>(
        Function<Store, Shelf<V>> shelf,
        BiFunction<Draft, V, Map<Object, V>> places,
        Function<V, Object> key,
        Function<V, Change> change) {
    static final Kind<KeptCourse> COURSE = new Kind<>(
            Store::courses,
            (draft, course) -> draft.courses(),
            KeptCourse::id,
            course -> new Change.OfCourse(course.id()));

    static final Kind<Group> GROUP = new Kind<>(
            Store::groups, (draft, group) -> draft.groups(), Group::id, group -> new Change.OfGroup(group.id()));

    static final Kind<Student> STUDENT = new Kind<>(
            Store::students,
            (draft, student) -> draft.students(),
            Student::id,
            student -> new Change.OfStudent(student.id()));

    static final Kind<Enrolment> ENROLMENT = new Kind<>(
            Store::enrolments,
            (draft, enrolment) -> draft.group(enrolment.group()).enrolments(),
            Enrolment::student,
            enrolment -> new Change.OfGroup(enrolment.group()));

    static final Kind<Session> SESSION = new Kind<>(
            Store::sessions,
            (draft, session) -> draft.group(session.group()).sessions(),
            Session::id,
            session -> new Change.OfSession(session.group(), session.id()));

    static final Kind<RegisterMark> MARK = new Kind<>(
            Store::register,
            (draft, mark) -> draft.group(mark.group()).marks(),
            mark -> new GroupView.MarkKey(mark.session(), mark.student()),
            mark -> new Change.OfSession(mark.group(), mark.session()));

    static final Kind<FiledReport> REPORT = new Kind<>(
            Store::reports,
            (draft, filed) ->
                    draft.group(filed.group()).reports().toChange(filed.report().student()),
            filed -> filed.report().sequence(),
            Change.OfCount::of);

    static final Kind<Note> NOTE = new Kind<>(
            Store::notes,
            (draft, note) -> draft.group(note.group()).notes(),
            note -> new GroupView.NoteKey(note.student(), note.part(), note.round()),
            note -> new Change.OfCount(note.group(), note.student(), note.part(), note.round()));

    static final Kind<Setting> SETTING = new Kind<>(
            Store::settings,
            (draft, setting) -> draft.settings(),
            Setting::name,
            setting -> new Change.OfSetting(setting.name()));

    /** In the order in which they can be read: whatever points at another comes after it. */
    static final List<Kind<?>> ALL = List.of(COURSE, GROUP, STUDENT, ENROLMENT, SESSION, MARK, REPORT, NOTE, SETTING);

    /** Puts a value into its place in memory. */
    void put(V value, Draft draft) {
        places.apply(draft, value).put(key.apply(value), value);
    }

    /** Takes a value out of its place in memory. */
    void take(V value, Draft draft) {
        places.apply(draft, value).remove(key.apply(value));
    }
}
