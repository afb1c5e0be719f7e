package roundwright.workbook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Map;
import roundwright.group.CountReport;
import roundwright.group.Group;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Student;
import roundwright.store.KeptCourse;

/** All that is held about one student, as JSON that another program can read. */
final class HeldJson {
    private final WorkbookView view;
    private final JsonGenerator json;

    private HeldJson(WorkbookView view, JsonGenerator json) {
        this.view = view;
        this.json = json;
    }

    static String of(WorkbookView view, Student student, LocalDate today) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
            new HeldJson(view, json).write(student, today);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    private void write(Student student, LocalDate today) throws IOException {
        json.writeStartObject();
        json.writeStringField("made", today.toString());
        json.writeStringField("name", student.name());
        json.writeBooleanField("left_handed", student.leftHanded());
        json.writeBooleanField("large_print", student.largePrint());
        json.writeStringField("note", student.note());
        json.writeArrayFieldStart("groups");
        for (Held held : Held.about(view, student.id())) {
            write(held);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("also_named_in");
        for (String mention : Mentions.of(view, student)) {
            json.writeString(mention);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(Held held) throws IOException {
        Group group = held.group().group();
        json.writeStartObject();
        json.writeStringField("group", group.name());
        json.writeStringField(
                "course", view.course(group.course()).map(KeptCourse::name).orElse(""));
        json.writeArrayFieldStart("register");
        for (RegisterMark mark : held.marks()) {
            json.writeStartObject();
            json.writeStringField(
                    "date", Lookup.session(held.group(), mark.session()).date().toString());
            json.writeStringField("attendance", HeldText.word(mark.attendance()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("reports");
        for (CountReport report : held.reports()) {
            write(report);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("notes");
        for (Note note : held.notes()) {
            json.writeStartObject();
            json.writeStringField("part", note.part());
            json.writeNumberField("round", note.round());
            json.writeStringField("text", note.text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(CountReport report) throws IOException {
        json.writeStartObject();
        json.writeStringField("at", report.at().toString());
        json.writeStringField("part", report.part());
        json.writeNumberField("round", report.round());
        json.writeStringField("kind", HeldText.word(report.kind()));
        if (report.count().isPresent()) {
            json.writeNumberField("count", report.count().getAsInt());
        }
        if (report.withdrawn().isPresent()) {
            json.writeStringField("withdrawn", report.withdrawn().get().toString());
        }
        json.writeStringField("note", report.note());
        json.writeObjectFieldStart("checks");
        for (Map.Entry<String, String> check : report.checks().entrySet()) {
            json.writeStringField(check.getKey(), check.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
