package roundwright.desktop.welcome;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Task;
import roundwright.group.CourseId;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;

/** The sample courses as tiles; pressing one opens it with an invented group that is half-way through. */
final class SampleTiles extends Wrap {
    private static final int STUDENTS = 8;
    private static final long SEED = 11;

    private final transient Desk desk;
    private final transient Runnable opened;

    /** A sample, read. */
    private record Sample(String text, Course course) {}

    /** Tells the listener when a sample has been pressed. */
    SampleTiles(Desk desk, Runnable opened) {
        super(2);
        this.desk = desk;
        this.opened = opened;
        readSamples();
    }

    /** The first tile, where the samples have been read. */
    Optional<JComponent> first() {
        return getComponentCount() > 0 ? Optional.of((JComponent) getComponent(0)) : Optional.empty();
    }

    private void readSamples() {
        desk.work().submit(new Task<List<Sample>>() {
            @Override
            public List<Sample> away() {
                List<Sample> samples = new ArrayList<>();
                for (String name : Samples.names()) {
                    Samples.text(name)
                            .ifPresent(text -> samples.add(
                                    new Sample(text, CourseFile.read(text).course())));
                }
                return samples;
            }

            @Override
            public void here(List<Sample> samples) {
                samples.forEach(sample -> add(new SampleTile(sample.course(), event -> open(sample))));
                revalidate();
                repaint();
                if (isShowing()) {
                    first().ifPresent(JComponent::requestFocusInWindow);
                }
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    private void open(Sample sample) {
        opened.run();
        CourseId id = desk.workbook().newCourse();
        desk.apply(new CourseEdit.AddCourse(id, sample.course().name(), sample.text()), () -> addGroup(id, sample));
    }

    /** Inventing people and their counts takes a while. */
    private void addGroup(CourseId id, Sample sample) {
        long weeks = (sample.course().lessons().size() + 1) / 2L;
        LocalDate start = desk.today().minusWeeks(weeks - 1);
        desk.work().submit(new Task<SampleGroup.Sample>() {
            @Override
            public SampleGroup.Sample away() {
                return SampleGroup.of(desk.workbook(), id, sample.course(), STUDENTS, SEED, start);
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
