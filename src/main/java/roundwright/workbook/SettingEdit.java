package roundwright.workbook;

import java.util.List;
import java.util.Optional;
import roundwright.store.Setting;
import roundwright.wording.Wording;

/** What the file remembers for the program. It is no work of the teacher's, so undo passes it over. */
public sealed interface SettingEdit extends Edit {
    Wording WORDS = Wording.of("workbook");

    /** Another value for a setting; empty forgets it. */
    record SetSetting(String setting, Optional<String> value) implements SettingEdit {
        @Override
        public String name(WorkbookView view) {
            return WORDS.say("edit.setting");
        }

        @Override
        public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
            return write(view, setting, value).<List<Write<?>>>map(List::of).orElse(List.of());
        }

        static Optional<Write<Setting>> write(WorkbookView view, String setting, Optional<String> value) {
            return Write.change(
                    Kind.SETTING, view.settingValue(setting), value.map(text -> new Setting(setting, text)));
        }

        @Override
        public boolean undoable() {
            return false;
        }
    }
}
