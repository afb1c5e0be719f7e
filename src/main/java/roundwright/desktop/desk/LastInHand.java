package roundwright.desktop.desk;

import java.util.Optional;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.store.KeptCourse;
import roundwright.workbook.WorkbookView;

/**
 * What lay on the desk when the file was last open, as far as it is still there, or else the first course there is.
 *
 * @param course nothing where the file has no course
 * @param group the group that was in hand, which need not take the course
 */
public record LastInHand(Optional<KeptCourse> course, Optional<GroupId> group) {
    static final String GROUP = "last-group";
    static final String COURSE = "last-course";

    public static LastInHand of(WorkbookView view) {
        Optional<GroupId> group =
                view.setting(GROUP).flatMap(LastInHand::number).map(GroupId::new);
        Optional<KeptCourse> course = group.flatMap(view::group)
                .map(found -> found.group().course())
                .or(() -> view.setting(COURSE).flatMap(LastInHand::number).map(CourseId::new))
                .flatMap(view::course)
                .or(() -> view.courses().stream().findFirst());
        return new LastInHand(course, group);
    }

    private static Optional<Long> number(String text) {
        return text.matches("\\d{1,18}") ? Optional.of(Long.valueOf(text)) : Optional.empty();
    }
}
