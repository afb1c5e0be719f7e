package roundwright.desktop.counts;

import java.util.List;
import java.util.Optional;
import roundwright.desktop.chart.ChartKey;
import roundwright.desktop.chart.ChartPair;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.insight.Insight;
import roundwright.desktop.insight.StudentInsights;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.look.WrittenLine;
import roundwright.group.CountReport;
import roundwright.group.Student;
import roundwright.mistakes.Advice;
import roundwright.mistakes.Question;
import roundwright.mistakes.story.Check;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;

/** What probably happened, the one check to ask for next, and what to do about it. */
final class InsightSection extends Stack {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Insight insight;
    private final transient InsightWords words;

    InsightSection(Desk desk, Insight insight, StudentInsights known) {
        this.desk = desk;
        this.insight = insight;
        this.words = new InsightWords(insight, desk.course().orElseThrow().terms());
        if (words.worthALook()) {
            causes();
            charts(known);
            answered();
            insight.explanation().question().ifPresent(this::question);
            insight.advice().ifPresent(this::advice);
        } else {
            below(0, Prose.body(words.sentence()));
            answered();
        }
    }

    private void causes() {
        List<InsightWords.Cause> causes = words.causes();
        if (causes.isEmpty()) {
            below(0, Prose.body(words.sentence()));
            return;
        }
        below(0, Prose.heading(WORDS.say("what-happened")));
        causes.forEach(cause -> below(0.5, new CauseRow(cause)));
        if (!words.began().isEmpty()) {
            below(1, Prose.muted(words.began()));
        }
    }

    /** The round as it should be and as it probably is, side by side. */
    private void charts(StudentInsights known) {
        boolean leftHanded = desk.student().map(Student::leftHanded).orElse(false);
        ProbableCharts.of(desk.course().orElseThrow(), known, insight, leftHanded)
                .ifPresent(found -> {
                    below(2.5, Prose.heading(WORDS.say("chart-compared")));
                    below(1, new ChartPair(found.written(), found.worked()));
                    if (found.marked()) {
                        below(0.75, Prose.muted(WORDS.say("chart-marked")));
                    }
                    ChartKey key = below(1, new ChartKey());
                    key.show(found.written(), found.worked());
                });
    }

    private void answered() {
        insight.explanation()
                .report()
                .checks()
                .forEach((check, answer) -> Check.of(check).ifPresent(known -> {
                    Question question = new Question(known, 0);
                    String said = question.answers().stream()
                            .filter(each -> each.word().equals(answer))
                            .map(Question.Answer::words)
                            .findFirst()
                            .orElse(answer);
                    below(1.5, Prose.muted(question.words() + " **" + said + "**"));
                    Wrap row = below(0.5, new Wrap(1));
                    row.add(Buttons.quiet(WORDS.say("take-answer-back"), () -> answer(check, Optional.empty())));
                }));
    }

    private void question(Question question) {
        below(2.5, Prose.heading(WORDS.say("ask-next")));
        below(0.75, Prose.body(question.words()));
        Wrap answers = below(1, new Wrap(1));
        for (Question.Answer answer : question.answers()) {
            answers.add(
                    Buttons.quiet(answer.words(), () -> answer(question.check().word(), Optional.of(answer.word()))));
        }
    }

    private void answer(String check, Optional<String> answer) {
        CountReport report = insight.explanation().report();
        desk.group()
                .ifPresent(
                        group -> desk.apply(new CountEdit.AnswerCheck(group.id(), report.sequence(), check, answer)));
    }

    private void advice(Advice advice) {
        below(2.5, Prose.heading(WORDS.say("what-to-do")));
        Advice.Choice best = advice.best();
        below(0.75, Prose.body("**" + best.words() + "** " + InsightWords.minutes(best)));
        best.line().ifPresent(line -> below(1, new WrittenLine(line)));
        advice.choices().stream()
                .skip(1)
                .forEach(choice -> below(
                        1,
                        Prose.muted(
                                choice.open() ? choice.words() + " " + InsightWords.minutes(choice) : choice.words())));
    }
}
