package roundwright.technique;

import java.util.List;
import java.util.Optional;
import roundwright.notation.Terms;

/**
 * Something a student has to be taught.
 *
 * @param id names it in files and commands, in UK words: {@code magic-ring}, {@code double-crochet}
 * @param uk its name, and how patterns write it, in UK terms
 * @param us the same in US terms
 * @param needs what has to come before it
 * @param minutes teaching minutes: demonstrate, work it together, try it alone
 * @param groundwork whether it is shown in passing: holding the hook, counting, reading a line, fastening off. It takes its minutes, but it is
 *     not a new movement of the hands and does not count as one of a lesson's new techniques
 * @param comesWith the occasion on which it has to be shown although no pattern writes it
 * @param found a regular expression that finds it in the words of a line, where no stitch shows it
 * @param how how it goes, a step a sentence
 * @param right what right looks like
 * @param wrong what wrong looks like
 */
public record Technique(
        String id,
        Names uk,
        Names us,
        Needs needs,
        double minutes,
        boolean groundwork,
        Optional<Occasion> comesWith,
        Optional<String> found,
        List<Passage> how,
        Optional<Passage> right,
        Optional<Passage> wrong) {
    /** A technique's name in one of the terms, and the other ways in which it is written there. */
    public record Names(String name, List<String> written) {
        public Names {
            written = List.copyOf(written);
        }
    }

    /**
     * What has to come before a technique.
     *
     * @param all ids that must all come before
     * @param oneOf ids of which one is enough; may be empty
     */
    public record Needs(List<String> all, List<String> oneOf) {
        public static final Needs NOTHING = new Needs(List.of(), List.of());

        public Needs {
            all = List.copyOf(all);
            oneOf = List.copyOf(oneOf);
        }
    }

    public Technique {
        if (id.isBlank() || !(minutes >= 0 && minutes <= 1000)) {
            throw new IllegalArgumentException("technique '" + id + "' of " + minutes + " minutes");
        }
        how = List.copyOf(how);
    }

    public String name(Terms terms) {
        return names(terms).name();
    }

    public Names names(Terms terms) {
        return terms == Terms.UK ? uk : us;
    }

    /** How it goes, a step a sentence, as a student reads it. */
    public List<String> how(Terms terms, boolean leftHanded) {
        return how.stream().map(step -> step.in(terms, leftHanded)).toList();
    }

    /** What right looks like, as a student reads it. */
    public Optional<String> right(Terms terms, boolean leftHanded) {
        return right.map(passage -> passage.in(terms, leftHanded));
    }

    /** What wrong looks like, as a student reads it. */
    public Optional<String> wrong(Terms terms, boolean leftHanded) {
        return wrong.map(passage -> passage.in(terms, leftHanded));
    }
}
