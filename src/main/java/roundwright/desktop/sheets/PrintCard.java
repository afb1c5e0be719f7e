package roundwright.desktop.sheets;

import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.util.function.Consumer;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.wording.Wording;

/** Shows sheets page by page, as they will be printed, and sends them to a printer. */
final class PrintCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double WIDTH = 620;
    private static final double PIXELS_A_POINT = 1.5;

    private final transient PrintedSheets sheets;
    private final transient Work drawing;
    private final transient Desk desk;
    private final PagePicture picture = new PagePicture();
    private final Prose told = Prose.body("");
    private int page;

    PrintCard(Desk desk, Work drawing, Asking asking, PrintedSheets sheets, Consumer<Pageable> print) {
        super(WORDS.say("print-head"), WIDTH);
        this.desk = desk;
        this.drawing = drawing;
        this.sheets = sheets;
        Wrap turning = body().below(0, new Wrap(0.5));
        turning.add(Buttons.icon(WORDS.say("print-before"), Glyph.LEFT, () -> turn(-1)));
        turning.add(Buttons.icon(WORDS.say("print-after"), Glyph.RIGHT, () -> turn(1)));
        body().below(0.5, told);
        body().below(1, picture);
        Keys.bindAround(this, "PAGE_UP", () -> turn(-1));
        Keys.bindAround(this, "PAGE_DOWN", () -> turn(1));
        answer(WORDS.say("print-answer"), () -> {
            asking.close();
            print.accept(sheets.pageable());
        });
        cancel(asking);
        turn(0);
    }

    private void turn(int by) {
        page = Math.max(0, Math.min(sheets.count() - 1, page + by));
        int wanted = page;
        String words = WORDS.say("print-page", wanted + 1, sheets.count(), sheets.title(wanted));
        told.setText(words);
        drawing.submit(new Task<BufferedImage>() {
            @Override
            public BufferedImage away() {
                return sheets.image(wanted, PIXELS_A_POINT);
            }

            @Override
            public void here(BufferedImage image) {
                if (wanted == page) {
                    picture.show(image, words);
                }
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
