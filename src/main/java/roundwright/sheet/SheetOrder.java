package roundwright.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.course.Course;
import roundwright.sheet.content.GroupReports;
import roundwright.sheet.style.Paper;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;

/**
 * What is to be made.
 *
 * @param course whose sheets
 * @param group for whom, where there is a group
 * @param kinds what is wanted; kinds that need a group are left out where there is none
 * @param lesson the one lesson wanted; empty for all
 * @param styles how students' sheets look, each wanted in every one of them; a student's own pages follow the student instead
 * @param paper of all sheets
 */
public record SheetOrder(
        Course course,
        Optional<GroupReports> group,
        Set<SheetKind> kinds,
        OptionalInt lesson,
        List<SheetStyle> styles,
        Paper paper) {
    public SheetOrder {
        kinds = Set.copyOf(kinds);
        styles = List.copyOf(styles);
    }

    /** Everything for a course on A4, students' sheets in plain type. */
    public static SheetOrder of(Course course) {
        return new SheetOrder(
                course,
                Optional.empty(),
                EnumSet.allOf(SheetKind.class),
                OptionalInt.empty(),
                List.of(SheetStyle.PLAIN),
                Paper.A4);
    }

    public SheetOrder forGroup(GroupReports reports) {
        return new SheetOrder(course, Optional.of(reports), kinds, lesson, styles, paper);
    }

    public SheetOrder only(Set<SheetKind> wanted) {
        return new SheetOrder(course, group, wanted, lesson, styles, paper);
    }

    public SheetOrder lesson(int number) {
        return new SheetOrder(course, group, kinds, OptionalInt.of(number), styles, paper);
    }

    public SheetOrder styled(List<SheetStyle> wanted) {
        return new SheetOrder(course, group, kinds, lesson, wanted, paper);
    }

    public SheetOrder on(Paper sheets) {
        return new SheetOrder(course, group, kinds, lesson, styles, sheets);
    }

    /** Every way in which a student's sheet can look. */
    public static List<SheetStyle> everyStyle() {
        List<SheetStyle> styles = new java.util.ArrayList<>();
        for (TypeSetting type : TypeSetting.values()) {
            styles.add(SheetStyle.PLAIN.typed(type));
            styles.add(SheetStyle.PLAIN.typed(type).handed(true));
        }
        return styles;
    }
}
