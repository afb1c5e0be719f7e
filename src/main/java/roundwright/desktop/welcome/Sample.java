package roundwright.desktop.welcome;

import java.time.LocalDate;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.group.CourseId;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;

/**
 * A sample course, read; it opens with an invented group that is half-way through.
 *
 * @param text its course file
 */
public record Sample(String text, Course course) {
    private static final int STUDENTS = 8;
    private static final long SEED = 11;

    /** The sample of a name in {@link Samples#names}. */
    public static Optional<Sample> named(String name) {
        return Samples.text(name)
                .map(text -> new Sample(text, CourseFile.read(text).course()));
    }

    /** Puts the course and its group into the open file and lays them on the desk. */
    public void openOn(Desk desk) {
        CourseId id = desk.workbook().newCourse();
        desk.apply(new CourseEdit.AddCourse(id, course.name(), text), () -> addGroup(desk, id));
    }

    /** Inventing people and their counts takes a while. */
    private void addGroup(Desk desk, CourseId id) {
        long weeks = (course.lessons().size() + 1) / 2L;
        LocalDate start = desk.today().minusWeeks(weeks - 1);
        desk.work().submit(new Task<SampleGroup.Sample>() {
            @Override
            public SampleGroup.Sample away() {
                return SampleGroup.of(desk.workbook(), id, course, STUDENTS, SEED, start);
            }

            @Override
            public void here(SampleGroup.Sample group) {
                desk.apply(group.edit(), () -> desk.chooseCourse(id, Optional.of(group.group())));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
