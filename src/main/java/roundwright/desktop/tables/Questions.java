package roundwright.desktop.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.counts.Unknowns;
import roundwright.wording.Wording;

/** What has to be asked of a file: who is meant by names that nobody has, which rounds by those that the pattern lacks. */
final class Questions {
    private static final Wording WORDS = Wording.of("desktop");

    /** More questions than these are a file for another group. */
    static final int MOST = 40;

    private final List<Student> students;
    private final OpenCourse course;
    private final List<Question> asked = new ArrayList<>();

    private Questions(OpenCourse course, List<Student> students) {
        this.course = course;
        this.students = students;
    }

    static List<Question> of(Unknowns unknowns, OpenCourse course, List<Student> students) {
        Questions questions = new Questions(course, students);
        if (unknowns.withoutPart() > 0) {
            questions.usualPart(unknowns.withoutPart());
        }
        questions.each(unknowns.parts(), questions::part);
        questions.each(unknowns.students(), questions::student);
        questions.each(unknowns.guessed(), questions::guessed);
        questions.each(unknowns.places(), questions::place);
        return List.copyOf(questions.asked);
    }

    private <K, V> void each(Map<K, V> found, BiConsumer<K, V> ask) {
        for (Map.Entry<K, V> one : found.entrySet()) {
            if (asked.size() < MOST) {
                ask.accept(one.getKey(), one.getValue());
            }
        }
    }

    private List<String> parts() {
        return course.places().stream().map(RoundPlace::part).distinct().toList();
    }

    private void usualPart(int counts) {
        List<Question.Answer> answers = new ArrayList<>();
        answers.add(leaveOut(wish -> wish.usualPart(Optional.empty())));
        parts().forEach(part -> answers.add(new Question.Answer(part, wish -> wish.usualPart(Optional.of(part)))));
        asked.add(new Question(WORDS.say("ask-usual-part", counts), answers));
    }

    private void part(String written, int counts) {
        List<Question.Answer> answers = new ArrayList<>();
        answers.add(leaveOut(wish -> wish.part(written, Optional.empty())));
        parts().forEach(part -> answers.add(new Question.Answer(part, wish -> wish.part(written, Optional.of(part)))));
        asked.add(new Question(WORDS.say("ask-part", written, counts), answers));
    }

    private void student(String written, int counts) {
        List<Question.Answer> answers = new ArrayList<>();
        answers.add(leaveOut(wish -> wish.student(written, Optional.empty())));
        answers.add(new Question.Answer(
                WORDS.say("ask-new-student"), wish -> wish.student(written, Optional.of(written.strip()))));
        answers.addAll(everyone(written));
        asked.add(new Question(WORDS.say("ask-student", written, counts), answers));
    }

    private List<Question.Answer> everyone(String written) {
        return students.stream()
                .map(student ->
                        new Question.Answer(student.name(), wish -> wish.student(written, Optional.of(student.name()))))
                .toList();
    }

    private void guessed(String written, String taken) {
        List<Question.Answer> answers = new ArrayList<>();
        answers.add(new Question.Answer(taken, wish -> wish.student(written, Optional.of(taken))));
        answers.add(new Question.Answer(
                WORDS.say("ask-new-student"), wish -> wish.student(written, Optional.of(written.strip()))));
        everyone(written).stream()
                .filter(answer -> !answer.words().equals(taken))
                .forEach(answers::add);
        asked.add(new Question(WORDS.say("ask-guessed", written, taken), answers));
    }

    private void place(RoundPlace written, int counts) {
        List<Question.Answer> answers = new ArrayList<>();
        answers.add(leaveOut(wish -> wish.place(written, Optional.empty())));
        course.places()
                .forEach(place -> answers.add(new Question.Answer(
                        WORDS.say("part-round", place.part(), place.round()),
                        wish -> wish.place(written, Optional.of(place)))));
        asked.add(new Question(WORDS.say("ask-place", written.part(), written.round(), counts), answers));
    }

    private static Question.Answer leaveOut(java.util.function.UnaryOperator<ImportWish> does) {
        return new Question.Answer(WORDS.say("ask-leave-out"), does);
    }
}
