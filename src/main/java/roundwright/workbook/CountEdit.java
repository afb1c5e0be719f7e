package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import roundwright.group.CountReport;
import roundwright.group.GroupId;
import roundwright.group.Note;
import roundwright.group.StudentId;
import roundwright.store.FiledReport;
import roundwright.wording.Wording;

/** What is done with the counts that students report. */
public sealed interface CountEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /** Files reports, in order: one count that was typed, or a whole import. */
    record ReportCounts(GroupId group, List<NewCount> counts) implements CountEdit {
        public ReportCounts {
            counts = List.copyOf(counts);
            if (counts.isEmpty()) {
                throw new IllegalArgumentException("no counts to report");
            }
        }

        public ReportCounts(GroupId group, NewCount count) {
            this(group, List.of(count));
        }

        @Override
        public String name(WorkbookView view) {
            NewCount first = counts.get(0);
            String student =
                    Lookup.student(Lookup.group(view, group), first.student()).name();
            if (counts.size() > 1) {
                return WORDS.say("edit.counts", counts.size());
            }
            return switch (first.kind()) {
                case COUNTED -> WORDS.say("edit.count", first.round(), student);
                case UNFINISHED -> WORDS.say("edit.unfinished", first.round(), student);
                case PULLED_BACK -> WORDS.say("edit.pull-back", first.round(), student);
            };
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            GroupView found = Lookup.group(view, group);
            List<Write<?>> writes = new ArrayList<>();
            for (NewCount count : counts) {
                Lookup.student(found, count.student());
                writes.add(Write.insert(Kind.REPORT, new FiledReport(group, count.filed(stamp))));
            }
            return writes;
        }
    }

    /** Takes back a report that was made in error: it counts for nothing, what was said before it holds again, and history shows it. */
    record TakeBack(GroupId group, long report) implements CountEdit {
        @Override
        public String name(WorkbookView view) {
            CountReport found = found(view);
            return WORDS.say(
                    "edit.take-back",
                    found.round(),
                    Lookup.student(view, found.student()).name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            CountReport before = found(view);
            return before.stands()
                    ? List.of(Write.replace(
                            Kind.REPORT,
                            new FiledReport(group, before),
                            new FiledReport(group, before.withdrawn(Optional.of(stamp.now())))))
                    : List.of();
        }

        private CountReport found(WorkbookView view) {
            return Lookup.there(Lookup.group(view, group).report(report), report);
        }
    }

    /** The answer to a check made at the table, for a report; empty takes it away. Checks and answers are by their names. */
    record AnswerCheck(GroupId group, long report, String check, Optional<String> answer) implements CountEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.answer", found(view).round());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            CountReport before = found(view);
            Map<String, String> answers = new TreeMap<>(before.checks());
            answer.ifPresentOrElse(word -> answers.put(check, word), () -> answers.remove(check));
            return List.of(Write.replace(
                    Kind.REPORT, new FiledReport(group, before), new FiledReport(group, before.checked(answers))));
        }

        private CountReport found(WorkbookView view) {
            return Lookup.there(Lookup.group(view, group).report(report), report);
        }
    }

    /** The teacher's words on a student's round; blank takes them away. */
    record SetNote(GroupId group, StudentId student, String part, int round, String text) implements CountEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.note", round, Lookup.student(view, student).name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            GroupView found = Lookup.group(view, group);
            Lookup.student(found, student);
            Optional<Note> after =
                    text.isBlank() ? Optional.empty() : Optional.of(new Note(group, student, part, round, text));
            return Write.change(Kind.NOTE, found.noteValue(student, part, round), after)
                    .<List<Write<?>>>map(List::of)
                    .orElse(List.of());
        }
    }
}
