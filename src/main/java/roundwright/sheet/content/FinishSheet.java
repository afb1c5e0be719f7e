package roundwright.sheet.content;

import java.util.List;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.sheet.chart.PiecePicture;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.technique.FirstUses.Use;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** The last page: what a student has made, to keep. */
public final class FinishSheet {
    private static final Wording WORDS = Wording.of("sheet");

    private FinishSheet() {}

    public static Element of(CourseWork work, GroupReports group, Student student, SheetStyle style) {
        Standing standing = group.standing(work.course(), student);
        String name = work.course().name();
        long rounds =
                standing.rounds().stream().filter(round -> round.state().done()).count();
        int stitches = standing.rounds().stream()
                .filter(round -> round.state().done())
                .mapToInt(round -> round.count().orElse(0))
                .sum();
        boolean whole = standing.next().isEmpty();
        Document document = new Document(
                        style, WORDS.say(whole ? "has-made" : "is-making"), name, WORDS.say("finish-file", name))
                .kind("keepsake")
                .landscape();
        document.add(Element.styled("p", "maker", student.name()))
                .add(Element.styled(
                        "p",
                        "piece",
                        PiecePicture.of(
                                work.course().pattern(),
                                640,
                                120,
                                WORDS.say("piece-picture", standing.rounds().size()))));
        if (rounds > 0) {
            document.add(Element.styled("p", "sum", WORDS.say("finish-sum", rounds, stitches)));
        }
        List<String> learned = learned(work, standing);
        if (!learned.isEmpty()) {
            document.add(Element.styled("p", "learned", WORDS.say("finish-learned", Wording.list(learned))));
        }
        return document.add(
                        Element.styled("p", "signed", WORDS.say("finish-date")),
                        Element.styled("p", "signed", WORDS.say("finish-teacher")))
                .html();
    }

    private static List<String> learned(CourseWork work, Standing standing) {
        List<RoundStanding> done =
                standing.rounds().stream().filter(round -> round.state().done()).toList();
        return work.uses().all().stream()
                .filter(use -> done.stream().anyMatch(round -> reached(use, round)))
                .map(Use::technique)
                .filter(technique -> !technique.groundwork())
                .map((Technique technique) -> technique.name(work.terms()))
                .toList();
    }

    private static boolean reached(Use use, RoundStanding round) {
        return use.place().part().equals(round.place().part())
                && use.place()
                        .round()
                        .map(number -> number <= round.place().round())
                        .orElse(true);
    }
}
