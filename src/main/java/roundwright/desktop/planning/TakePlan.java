package roundwright.desktop.planning;

import java.util.List;
import java.util.function.Function;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.Several;

/** Puts another text in the place of the course's, as one named step of undo. */
final class TakePlan {
    private TakePlan() {}

    /**
     * @param what names the step
     * @param writing makes the text; runs away from the event thread
     * @param then runs on the event thread when the text is in the file
     */
    static void take(Desk desk, String what, Function<OpenCourse, String> writing, Runnable then) {
        OpenCourse open = desk.course().orElseThrow();
        desk.work().submit(new Task<String>() {
            @Override
            public String away() {
                return writing.apply(open);
            }

            @Override
            public void here(String text) {
                if (text.equals(open.kept().text())) {
                    then.run();
                    return;
                }
                var edit = new CourseEdit.ReplaceCourseText(
                        open.kept().id(), open.kept().name(), text);
                desk.apply(new Several(what, List.of(edit)), then);
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
