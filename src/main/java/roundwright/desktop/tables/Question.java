package roundwright.desktop.tables;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Something in a file that the teacher has to decide on.
 *
 * @param words what is asked
 * @param answers what can be answered; the first holds until another is chosen
 */
record Question(String words, List<Answer> answers) {
    Question {
        answers = List.copyOf(answers);
    }

    /**
     * An answer.
     *
     * @param does what it makes of what was said so far
     */
    record Answer(String words, UnaryOperator<ImportWish> does) {
        @Override
        public String toString() {
            return words;
        }
    }
}
