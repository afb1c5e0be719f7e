package roundwright.sheet.content;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundwright.course.Lesson;
import roundwright.group.RoundPlace;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.help.GroupPicture;
import roundwright.mistakes.help.Outlook;
import roundwright.mistakes.help.Reason;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Wording;

/** What to expect of the rounds of a lesson, and who needs a seat beside the teacher; without a group, what beginners usually do. */
final class LessonOutlook {
    private static final Wording WORDS = Wording.of("sheet");
    private static final int MOST_ROUNDS = 4;
    private static final int MOST_SEATS = 4;

    /** Below this a round is no harder than any. */
    private static final double WORTH_SAYING = 0.05;

    /** A class of the usual size, where no group is known. */
    private static final int USUAL_GROUP = 10;

    private LessonOutlook() {}

    static List<String> hardRounds(CourseWork work, Lesson lesson, Optional<GroupPicture> group, int students) {
        List<RoundPlace> places = work.inClass(lesson).stream()
                .flatMap(item -> item.round().stream().map(round -> new RoundPlace(item.part(), round.number())))
                .toList();
        Sentences sentences = new Sentences(work.terms());
        return outlook(work, places, group)
                .filter(outlook -> outlook.wrong() >= WORTH_SAYING)
                .limit(MOST_ROUNDS)
                .map(outlook -> outlook.words(size(students), sentences))
                .toList();
    }

    /** How many people are spoken of: the group, or one of the usual size where nobody is known. */
    static int size(int students) {
        return students == 0 ? USUAL_GROUP : students;
    }

    private static Stream<Outlook> outlook(CourseWork work, List<RoundPlace> places, Optional<GroupPicture> group) {
        if (group.isPresent()) {
            return group.get().outlook(places).stream();
        }
        PatternStory story = new PatternStory(work.course().pattern(), Rates.STORY);
        return places.stream()
                .flatMap(place -> Outlook.of(story, place).stream())
                .sorted((one, other) -> Double.compare(other.wrong(), one.wrong()));
    }

    /** Who needs a seat beside the teacher, and why. */
    static List<String> seats(Optional<GroupPicture> group) {
        return group.stream()
                .flatMap(picture -> picture.stuck().stream())
                .limit(MOST_SEATS)
                .map(needs -> WORDS.say(
                        "seat",
                        needs.student().name(),
                        needs.reasons().stream().map(Reason::words).findFirst().orElse("")))
                .toList();
    }
}
