package roundwright.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.GroupId;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.pattern.Part;
import roundwright.pattern.Round;
import roundwright.sheet.content.GroupReports;

/** Courses and an invented group for the tests of sheets, and what a PDF says. */
final class SampleSheets {
    /** Names that a careless page would break on. */
    static final List<String> HARD_NAMES = List.of(
            "Ines",
            "<script>alert(1)</script>",
            "Bartholomew Maximilian Featherstonehaugh-Cholmondeley of the Lower Marshes and the Upper Dunes",
            "נועה לוי",
            "عمر حداد",
            "\"Jo\" & 'Mo' </title>",
            "Şebnem Øyvind Łucja",
            "{0} ${name} \\u0000",
            "W".repeat(200),
            "Ada\u0007\u202Ereversed\uFFFF",
            "Ζωή Жанна",
            "小林 🧶");

    private SampleSheets() {}

    static Course course(String file) {
        try {
            return read(Files.readString(Path.of("lessons", file)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Course read(String text) {
        return CourseFile.read(text).course();
    }

    /** Students of these names, each further than the one before, with a count off here and there; the first has finished. */
    static GroupReports group(Course course, List<String> names) {
        Random random = new Random(7);
        List<Student> students = new ArrayList<>();
        List<CountReport> reports = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            StudentId id = new StudentId(i + 1);
            students.add(new Student(id, names.get(i), i % 5 == 4, i % 5 == 2, ""));
            int stop = i == 0 ? Integer.MAX_VALUE : 6 + i;
            for (Part part : course.pattern().parts()) {
                for (Round round : part.rounds()) {
                    if (stop-- > 0) {
                        int off = random.nextInt(8) == 0 ? 1 - 2 * random.nextInt(2) : 0;
                        reports.add(new CountReport(
                                reports.size() + 1L,
                                id,
                                part.name(),
                                round.number(),
                                CountReport.Kind.COUNTED,
                                OptionalInt.of(Math.max(0, round.count().orElse(6) + off)),
                                Instant.EPOCH,
                                ""));
                    }
                }
            }
        }
        Session first =
                new Session(new SessionId(1), new GroupId(1), LocalDate.of(2027, 1, 5), OptionalInt.of(1), "", "");
        List<RegisterMark> marks = new ArrayList<>();
        for (int i = 0; i < students.size(); i++) {
            Attendance attendance = Attendance.values()[i % Attendance.values().length];
            marks.add(
                    new RegisterMark(new GroupId(1), first.id(), students.get(i).id(), attendance));
        }
        return new GroupReports(
                "Tuesday evenings", students, reports, List.of(first), marks, LocalDate.of(2027, 1, 12));
    }

    /** The words of a PDF with all space drawn together. */
    static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    static byte[] bytes(List<Sheet> sheets, String file) {
        return sheets.stream()
                .filter(sheet -> sheet.file().equals(file))
                .findFirst()
                .orElseThrow(() -> new AssertionError(file + " is not among "
                        + sheets.stream().map(Sheet::file).toList()))
                .bytes()
                .get();
    }
}
