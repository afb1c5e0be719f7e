package roundwright.technique;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.notation.Terms;

/**
 * Something a student has to be taught.
 *
 * @param id names it in files and commands, in UK words: {@code magic-ring}, {@code double-crochet}
 * @param nameUk its name in UK terms
 * @param nameUs its name in US terms
 * @param written how patterns write it, in either terms
 * @param needs ids of techniques that come before
 * @param minutes teaching minutes: demonstrate, work it together, try it alone
 * @param how how it goes, a step a line
 * @param right what right looks like
 * @param wrong what wrong looks like
 */
public record Technique(
        String id,
        String nameUk,
        String nameUs,
        List<String> written,
        Set<String> needs,
        double minutes,
        List<String> how,
        Optional<String> right,
        Optional<String> wrong) {
    public Technique {
        written = List.copyOf(written);
        needs = Set.copyOf(needs);
        how = List.copyOf(how);
    }

    public String name(Terms terms) {
        return terms == Terms.UK ? nameUk : nameUs;
    }
}
