package roundwright.desktop.welcome;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Task;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;

/** What is shown while there is no course: the ways to begin. */
public final class WelcomePage extends PageCard implements FirstFocus {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int STUDENTS = 8;
    private static final long SEED = 11;

    private final transient Desk desk;
    private final Wrap tiles = new Wrap(2);

    /** A sample, read. */
    private record Sample(String text, Course course) {}

    public WelcomePage(Desk desk, Deeds deeds) {
        this(desk, deeds, new Stack());
    }

    private WelcomePage(Desk desk, Deeds deeds, Stack body) {
        super(body);
        this.desk = desk;
        setBorder(Space.pad(4, 5, 4, 5));
        body.below(0, new Text(WORDS.say("welcome-head"), Type.TITLE, Tone.INK));
        body.below(1.5, Prose.page(WORDS.say("welcome")));
        body.below(4, Text.heading(WORDS.say("welcome-samples")));
        body.below(0.75, Prose.muted(WORDS.say("welcome-samples-more")));
        body.below(2, tiles);
        body.below(4, Text.heading(WORDS.say("welcome-own")));
        body.below(0.75, Prose.muted(WORDS.say("welcome-own-more")));
        Wrap own = body.below(2, new Wrap(1));
        own.add(deeds.mainButton(Deed.PASTE_PATTERN));
        own.add(deeds.button(Deed.OPEN_COURSE));
        body.below(4, Prose.muted(WORDS.say("welcome-where", desk.workbook().file())));
        readSamples();
    }

    @Override
    public JComponent first() {
        return tiles.getComponentCount() > 0 ? (JComponent) tiles.getComponent(0) : this;
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
                samples.forEach(sample -> tiles.add(new SampleTile(sample.course(), event -> open(sample))));
                revalidate();
                repaint();
                if (isShowing()) {
                    first().requestFocusInWindow();
                }
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    /** Opens a sample with an invented group that is half-way through it. */
    private void open(Sample sample) {
        var id = desk.workbook().newCourse();
        desk.apply(new CourseEdit.AddCourse(id, sample.course().name(), sample.text()), () -> {
            long weeks = (sample.course().lessons().size() + 1) / 2L;
            SampleGroup.Sample group = SampleGroup.of(
                    desk.workbook(),
                    id,
                    sample.course(),
                    STUDENTS,
                    SEED,
                    desk.today().minusWeeks(weeks - 1));
            desk.apply(group.edit(), () -> desk.chooseCourse(id, java.util.Optional.of(group.group())));
        });
    }
}
