package roundwright.group.counts;

import java.util.Map;
import roundwright.group.RoundPlace;

/**
 * What a table speaks of and the group or pattern does not have, for a person to decide; with how many counts hang on each.
 *
 * @param students by name as written
 * @param guessed names that are not quite a student's, with the student they were taken for
 * @param parts by name as written
 * @param places rounds that a part does not have
 * @param withoutPart counts for which no part is named, in a pattern of several
 * @param ofOtherCourses counts by the course they are said to be of
 */
public record Unknowns(
        Map<String, Integer> students,
        Map<String, String> guessed,
        Map<String, Integer> parts,
        Map<RoundPlace, Integer> places,
        int withoutPart,
        Map<String, Integer> ofOtherCourses) {}
