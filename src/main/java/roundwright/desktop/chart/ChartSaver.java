package roundwright.desktop.chart;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Type;
import roundwright.desktop.work.Task;
import roundwright.sheet.chart.ChartLeaf;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.PictureFile;
import roundwright.wording.Wording;
import roundwright.workbook.WholeFile;

/** Saves a chart with its key as a picture, where a person says. */
public final class ChartSaver {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double PIXELS_A_POINT = 3;

    private final Desk desk;
    private final Function<String, Optional<Path>> chooseTarget;

    /** Files in which a chart can be saved. */
    enum Format {
        SVG {
            @Override
            byte[] bytes(Picture picture) {
                return PictureFile.svg(picture);
            }
        },
        PNG {
            @Override
            byte[] bytes(Picture picture) {
                return PictureFile.png(picture, PIXELS_A_POINT);
            }
        };

        abstract byte[] bytes(Picture picture);

        String words() {
            return WORDS.say("chart-save." + ending());
        }

        String ending() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public ChartSaver(Desk desk, Function<String, Optional<Path>> chooseTarget) {
        this.desk = desk;
        this.chooseTarget = chooseTarget;
    }

    void save(ChartSubject subject, Format format) {
        String plain = subject.title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        chooseTarget.apply(plain + "." + format.ending()).ifPresent(path -> write(subject, format, path));
    }

    private void write(ChartSubject subject, Format format, Path path) {
        desk.work().submit(new Task<Void>() {
            @Override
            public Void away() throws IOException {
                Picture leaf = ChartLeaf.of(
                        subject.title(), subject.steps(), subject.terms(), subject.setting(), Type.BODY.font());
                WholeFile.write(path, format.bytes(leaf));
                return null;
            }

            @Override
            public void here(Void nothing) {
                desk.tell(WORDS.say("chart-saved", path));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("cannot-write-file", path));
            }
        });
    }
}
