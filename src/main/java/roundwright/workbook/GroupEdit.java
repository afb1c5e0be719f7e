package roundwright.workbook;

import java.util.List;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.wording.Wording;

/** What is done to groups. */
public sealed interface GroupEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /** A new run of a course; its id is from {@link Workbook#newGroup()}. */
    record AddGroup(Group group) implements GroupEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.add-group", group.name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            Lookup.course(view, group.course());
            return List.of(Write.insert(Kind.GROUP, group));
        }
    }

    /** Another name, start or place for a group. */
    record ChangeGroup(Group group) implements GroupEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.change-group", group.name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return List.of(
                    Write.replace(Kind.GROUP, Lookup.group(view, group.id()).group(), group));
        }
    }

    /** A group goes, with all it did; students who are in no other group go too. */
    record RemoveGroup(GroupId id) implements GroupEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.remove-group", Lookup.group(view, id).group().name());
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return Removal.of(view, Lookup.group(view, id));
        }
    }
}
