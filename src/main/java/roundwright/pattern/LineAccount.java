package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import roundwright.notation.Problem;

/** What can be told of a line when someone asks: by default nothing but its problems. */
interface LineAccount {
    List<Problem> problems();

    default List<Decision> decisions() {
        return List.of();
    }

    default Optional<Steps> round() {
        return Optional.empty();
    }

    default String words(Line line) {
        return "";
    }

    default String sum(Line line) {
        return "";
    }
}
