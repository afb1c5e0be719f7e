package roundwright.desktop.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.JComboBox;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Questions with their answers, one below the other. Once asked, a question stays, with its answer, until the file is read otherwise. */
final class QuestionRows extends Stack {
    private final transient Map<String, JComboBox<Question.Answer>> rows = new LinkedHashMap<>();
    private final transient Consumer<UnaryOperator<ImportWish>> answered;

    QuestionRows(Consumer<UnaryOperator<ImportWish>> answered) {
        this.answered = answered;
    }

    void forget() {
        rows.clear();
        removeAll();
    }

    /** Asks what has not been asked yet. */
    void ask(List<Question> questions) {
        questions.stream()
                .filter(question -> rows.size() < Questions.MOST && !rows.containsKey(question.words()))
                .forEach(this::add);
    }

    boolean none() {
        return rows.isEmpty();
    }

    private void add(Question question) {
        JComboBox<Question.Answer> answers = new JComboBox<>(question.answers().toArray(new Question.Answer[0]));
        answers.addActionListener(event -> answered.accept(((Question.Answer) answers.getSelectedItem()).does()));
        Prose words = Prose.of(question.words(), Type.SMALL_STRONG, Tone.INK);
        below(rows.isEmpty() ? 0 : 1.5, words.nameOf(answers));
        below(0.5, answers);
        rows.put(question.words(), answers);
    }
}
