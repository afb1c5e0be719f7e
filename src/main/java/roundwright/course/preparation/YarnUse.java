package roundwright.course.preparation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import roundwright.course.Course;
import roundwright.course.CourseSettings.Tension;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;
import roundwright.pattern.Yarn;

/**
 * How much yarn of which colour a piece takes, as a length.
 *
 * <p>What {@link Yarn} says of each round, with {@value #MARGIN} times that for a beginner's loose and tight rounds, and a tail at the
 * end of every part. The figures are guides: a weighed sample of one's own yarn is better.
 */
public final class YarnUse {
    private static final double MARGIN = 1.2;
    private static final double TAIL_METRES = 0.3;

    /** One round and the yarn it takes. */
    private record Worked(String part, int round, String colour, double metres) {}

    private final List<Worked> rounds = new ArrayList<>();

    private YarnUse() {}

    /** The yarn of a course; empty where its tension is not known. A course that names no colours has one without a name. */
    public static Optional<YarnUse> of(Course course) {
        return course.settings().tension().map(tension -> {
            YarnUse use = new YarnUse();
            Colours colours = new Colours(course.settings().yarn().orElse(""));
            String colour = colours.names().isEmpty() ? "" : colours.names().get(0);
            for (Part part : course.pattern().parts()) {
                colour = use.add(part, colours, colour, tension);
            }
            return use;
        });
    }

    private String add(Part part, Colours colours, String before, Tension tension) {
        String colour = before;
        var stitch = roundwright.pattern.Tension.toTenCentimetres(tension.stitches(), tension.rounds());
        List<PartItem> items = part.items();
        for (int i = 0; i < items.size(); i++) {
            colour = colours.takenUp(items.get(i).line().text()).orElse(colour);
            if (items.get(i) instanceof Round round) {
                boolean last = items.subList(i + 1, items.size()).stream().noneMatch(Round.class::isInstance);
                double metres = Yarn.metres(round, stitch) * MARGIN;
                rounds.add(new Worked(part.name(), round.number(), colour, metres + (last ? TAIL_METRES : 0)));
            }
        }
        return colour;
    }

    /** Metres by colour, in the order in which the colours are taken up, of the rounds that a test of part and number takes. */
    public Map<String, Double> metres(BiPredicate<String, Integer> rounds) {
        Map<String, Double> metres = new LinkedHashMap<>();
        this.rounds.stream()
                .filter(worked -> rounds.test(worked.part(), worked.round()))
                .forEach(worked -> metres.merge(worked.colour(), worked.metres(), Double::sum));
        return metres;
    }

    /** Metres by colour of the whole piece. */
    public Map<String, Double> metres() {
        return metres((part, round) -> true);
    }
}
