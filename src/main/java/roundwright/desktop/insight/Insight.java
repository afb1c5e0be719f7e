package roundwright.desktop.insight;

import java.util.Optional;
import roundwright.mistakes.Advice;
import roundwright.mistakes.Explanation;

/** What lies behind one report, and what to do about it where something should be done. */
public record Insight(Explanation explanation, Optional<Advice> advice) {}
