package roundwright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.mistakes.Advice;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Question;
import roundwright.mistakes.chain.Began;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.Kind;

/** An explanation as a value for JSON. */
final class MistakesJson {
    /** Causes are listed until so much of the probability is covered. */
    private static final double COVERED = 0.99;

    private static final double LEAST_COUNT = 0.0001;
    private static final double PRECISION = 1e6;

    private MistakesJson() {}

    static Map<String, Object> of(String student, Explanation explanation, Optional<Advice> advice) {
        Finding found = explanation.soFar();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("student", student);
        json.put("part", found.part());
        json.put("round", found.round());
        json.put("reported", explanation.report().count());
        json.put("expected", found.expected());
        json.put("pattern", explanation.written());
        json.put("state", explanation.state().word());
        json.put("explanations", causes(found));
        json.put("after", causes(explanation.after()));
        json.put("true_count", counts(found));
        json.put("surprise", rounded(found.surprise()));
        json.put("began", found.likeliestBegan().map(MistakesJson::began));
        json.put("advice", advice.map(MistakesJson::advice));
        json.put("ask", explanation.question().map(MistakesJson::ask));
        return json;
    }

    private static List<Map<String, Object>> causes(Finding finding) {
        List<Map<String, Object>> causes = new ArrayList<>();
        double covered = 0;
        for (Finding.Cause cause : finding.causes()) {
            if (covered >= COVERED) {
                break;
            }
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("kinds", cause.kinds().list().stream().map(Kind::word).toList());
            json.put("probability", rounded(cause.probability()));
            causes.add(json);
            covered += cause.probability();
        }
        return causes;
    }

    private static Map<String, Object> counts(Finding finding) {
        Map<String, Object> counts = new LinkedHashMap<>();
        finding.counts().stream()
                .filter(count -> count.probability() >= LEAST_COUNT)
                .forEach(count -> counts.put(Integer.toString(count.count()), rounded(count.probability())));
        return counts;
    }

    private static Map<String, Object> began(Began began) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("part", began.part());
        json.put("round", began.round());
        json.put("probability", rounded(began.probability()));
        return json;
    }

    private static Map<String, Object> advice(Advice advice) {
        Advice.Choice best = advice.best();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("choice", best.way().word());
        json.put("to_round", best.toRound());
        json.put("minutes", Math.round(best.minutes() * 10) / 10.0);
        json.put("line", best.line());
        return json;
    }

    private static Map<String, Object> ask(Question question) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("check", question.check().word());
        json.put("gain", rounded(question.gain()));
        return json;
    }

    private static double rounded(double value) {
        return Math.round(value * PRECISION) / PRECISION;
    }
}
