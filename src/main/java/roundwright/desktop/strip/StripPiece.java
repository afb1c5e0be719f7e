package roundwright.desktop.strip;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.group.RoundPlace;
import roundwright.pattern.Outline;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;
import roundwright.pattern.Tension;
import roundwright.pattern.WorkedAs;

/**
 * What the strip shows of a course, in columns numbered from 0 in working order.
 *
 * @param columns a round each
 * @param brackets a lesson's stretches of columns, in order
 */
public record StripPiece(List<Column> columns, List<Bracket> brackets) {
    /**
     * A round.
     *
     * @param count the count to reach
     * @param wool the yarn it is worked in
     * @param rise how much longer it makes the piece, in heights of a stitch; 1 where the tension is not known
     * @param across how wide the piece is there, in millimetres, where the tension is known
     */
    public record Column(RoundPlace place, OptionalInt count, Wool wool, double rise, OptionalDouble across) {}

    /** A lesson's stretch of columns, both ends included. */
    public record Bracket(int lesson, String name, int from, int to) {}

    public StripPiece {
        columns = List.copyOf(columns);
        brackets = List.copyOf(brackets);
    }

    /** The columns of a course's rounds and the brackets of its lessons. */
    public static StripPiece of(Course course) {
        List<Column> columns = new ArrayList<>();
        Optional<Wool> yarn = course.settings().yarn().flatMap(Wool::named);
        List<Part> parts = course.pattern().parts();
        for (int i = 0; i < parts.size(); i++) {
            yarn = Wool.named(parts.get(i).name()).or(() -> Optional.empty()).or(lastOf(yarn));
            yarn = addPart(columns, parts.get(i), i, yarn, outline(course, parts.get(i)));
        }
        return new StripPiece(columns, brackets(course, columns));
    }

    private static java.util.function.Supplier<Optional<Wool>> lastOf(Optional<Wool> yarn) {
        return () -> yarn;
    }

    private static Optional<Wool> addPart(
            List<Column> columns, Part part, int index, Optional<Wool> before, List<Side> sides) {
        int number = 0;
        Optional<Wool> yarn = before;
        for (PartItem item : part.items()) {
            Optional<Wool> named = Wool.named(item.line().text());
            yarn = named.isPresent() ? named : yarn;
            if (item instanceof Round round) {
                RoundPlace place = new RoundPlace(part.name(), round.number());
                Side side = sides.get(number++);
                columns.add(
                        new Column(place, round.count(), yarn.orElse(Wool.quiet(index)), side.rise(), side.across()));
            }
        }
        return yarn;
    }

    /** One round from the side. */
    private record Side(double rise, OptionalDouble across) {
        static final Side UNKNOWN = new Side(1, OptionalDouble.empty());
    }

    private static List<Side> outline(Course course, Part part) {
        Optional<Tension> tension =
                course.settings().tension().map(given -> Tension.toTenCentimetres(given.stitches(), given.rounds()));
        boolean flat = WorkedAs.of(part) == WorkedAs.ROWS;
        if (tension.isEmpty() || flat) {
            return Collections.nCopies(part.rounds().size(), Side.UNKNOWN);
        }
        List<Side> sides = new ArrayList<>();
        double height = 0;
        for (Outline.Ring ring : Outline.of(part, tension.get())) {
            double rise = (ring.height() - height) / tension.get().height();
            sides.add(new Side(rise, OptionalDouble.of(2 * ring.radius())));
            height = ring.height();
        }
        return sides;
    }

    private static List<Bracket> brackets(Course course, List<Column> columns) {
        List<Bracket> brackets = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= columns.size(); i++) {
            Optional<Lesson> lesson = lessonOf(course, columns.get(from));
            boolean ends =
                    i == columns.size() || !lessonOf(course, columns.get(i)).equals(lesson);
            if (ends) {
                int first = from;
                int last = i - 1;
                lesson.ifPresent(found -> brackets.add(new Bracket(found.number(), found.name(), first, last)));
                from = i;
            }
        }
        return brackets;
    }

    private static Optional<Lesson> lessonOf(Course course, Column column) {
        return course.lessonOf(column.place().part(), column.place().round());
    }

    /** The column of a round. */
    public OptionalInt columnOf(RoundPlace place) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).place().equals(place)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The largest count of the piece, at least 1. */
    public int largestCount() {
        return Math.max(
                1,
                columns.stream()
                        .mapToInt(column -> column.count().orElse(0))
                        .max()
                        .orElse(1));
    }

    /** Whether a part begins with this column. */
    public boolean beginsPart(int column) {
        return column == 0
                || !columns.get(column)
                        .place()
                        .part()
                        .equals(columns.get(column - 1).place().part());
    }

    /** The bracket over a column. */
    public Optional<Bracket> bracketOf(int column) {
        return brackets.stream()
                .filter(bracket -> bracket.from() <= column && column <= bracket.to())
                .findFirst();
    }
}
