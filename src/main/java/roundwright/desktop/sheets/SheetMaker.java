package roundwright.desktop.sheets;

import java.awt.print.Pageable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.RegisterMark;
import roundwright.group.Student;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetFolder;
import roundwright.sheet.SheetKind;
import roundwright.sheet.SheetOrder;
import roundwright.sheet.Sheets;
import roundwright.sheet.content.GroupReports;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** Makes sheets of what is on the desk, away from the event thread, and tells how far it is. */
public final class SheetMaker {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Work making;
    private final Asking asking;

    /** Sheets are made on a queue of their own, so that edits do not wait for them. */
    public SheetMaker(Desk desk, Work making, Asking asking) {
        this.desk = desk;
        this.making = making;
        this.asking = asking;
    }

    /** An order of some kinds for the course in hand and its group. */
    SheetOrder order(Set<SheetKind> kinds) {
        SheetOrder order = SheetOrder.of(desk.course().orElseThrow().course()).only(EnumSet.copyOf(kinds));
        return desk.group()
                .map(group -> order.forGroup(reports(group, group.students())))
                .orElse(order);
    }

    private GroupReports reports(GroupView group, List<Student> students) {
        List<RegisterMark> marks = new ArrayList<>();
        group.sessions()
                .forEach(session -> students.forEach(student -> group.attendance(session.id(), student.id())
                        .ifPresent(mark -> marks.add(new RegisterMark(group.id(), session.id(), student.id(), mark)))));
        var standing =
                group.reports().stream().filter(report -> report.stands()).toList();
        return new GroupReports(group.group().name(), students, standing, group.sessions(), marks, desk.today());
    }

    /** Writes an order's sheets into a folder, all or none; a card tells how far it is and lets it be stopped. */
    void write(SheetOrder order, Path folder) {
        AtomicBoolean goOn = new AtomicBoolean(true);
        ProgressCard card = new ProgressCard(asking, () -> goOn.set(false));
        asking.ask(card);
        making.submit(new Task<List<Path>>() {
            @Override
            public List<Path> away() throws Exception {
                return new SheetFolder(folder).write(Sheets.of(order), (done, of, last) -> {
                    making.here(() -> card.show(done, of));
                    return goOn.get();
                });
            }

            @Override
            public void here(List<Path> written) {
                asking.close();
                String told = written.isEmpty()
                        ? WORDS.say("sheets-stopped")
                        : WORDS.say("sheets-written", written.size(), folder);
                desk.tell(told);
            }

            @Override
            public void failed(Exception failure) {
                asking.close();
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    /** Makes an order's printed sheets and shows them, to be looked at and then printed. */
    void preview(SheetOrder order, Consumer<Pageable> print) {
        AtomicBoolean goOn = new AtomicBoolean(true);
        ProgressCard card = new ProgressCard(asking, () -> goOn.set(false));
        asking.ask(card);
        making.submit(new Task<PrintedSheets>() {
            @Override
            public PrintedSheets away() {
                List<Sheet> sheets = Sheets.of(order).stream()
                        .filter(sheet -> PrintedSheets.printed(sheet.kind()))
                        .toList();
                PrintedSheets printed = new PrintedSheets();
                for (int done = 0; done < sheets.size() && goOn.get(); done++) {
                    int number = done;
                    making.here(() -> card.show(number, sheets.size()));
                    printed.add(sheets.get(done));
                }
                return printed;
            }

            @Override
            public void here(PrintedSheets printed) {
                if (goOn.get() && printed.count() > 0) {
                    asking.close();
                    asking.ask(new PrintCard(desk, making, asking, printed, print));
                } else if (goOn.get()) {
                    asking.close();
                    desk.tell(WORDS.say("print-nothing"));
                }
            }

            @Override
            public void failed(Exception failure) {
                asking.close();
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    /** The chosen student's one sheet of a kind; empty where there is none. */
    Optional<Sheet> ofStudent(SheetKind kind) {
        return desk.student()
                .flatMap(student -> desk.group().flatMap(group -> {
                    SheetOrder order = SheetOrder.of(desk.course().orElseThrow().course())
                            .only(EnumSet.of(kind))
                            .forGroup(reports(group, List.of(student)));
                    return Sheets.of(order).stream()
                            .filter(sheet -> sheet.kind() == kind)
                            .findFirst();
                }));
    }

    /** Writes one sheet to a file. */
    void write(Sheet sheet, Path file) {
        making.submit(new Task<Void>() {
            @Override
            public Void away() throws IOException {
                Files.write(file, sheet.bytes().get());
                return null;
            }

            @Override
            public void here(Void nothing) {
                desk.tell(WORDS.say("sheet-written", file));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("cannot-write-file", file));
            }
        });
    }
}
