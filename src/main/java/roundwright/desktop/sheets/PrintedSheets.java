package roundwright.desktop.sheets;

import java.awt.image.BufferedImage;
import java.awt.print.Book;
import java.awt.print.Pageable;
import java.util.ArrayList;
import java.util.List;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetKind;
import roundwright.sheet.pdf.PrintedPages;

/** Sheets that have been made, one after the other, as pages to be looked at and printed. */
final class PrintedSheets {
    /** A page, and what it belongs to. */
    private record Page(String title, PrintedPages pages, int number) {}

    private final List<Page> all = new ArrayList<>();

    /** Whether sheets of a kind are printed; the others are for screens. */
    static boolean printed(SheetKind kind) {
        return kind != SheetKind.PHONE;
    }

    /** Makes a sheet and adds its pages: takes a tenth of a second or more. */
    void add(Sheet sheet) {
        PrintedPages pages = PrintedPages.open(sheet.bytes().get());
        for (int page = 0; page < pages.count(); page++) {
            all.add(new Page(sheet.title(), pages, page));
        }
    }

    int count() {
        return all.size();
    }

    /** What a page belongs to. */
    String title(int page) {
        return all.get(page).title();
    }

    /** A page as it will be printed, so many pixels a point. */
    BufferedImage image(int page, double scale) {
        Page wanted = all.get(page);
        return wanted.pages().image(wanted.number(), scale);
    }

    /** All pages for a printer. */
    Pageable pageable() {
        Book book = new Book();
        for (Page page : all) {
            Pageable pages = page.pages().pageable();
            book.append(pages.getPrintable(page.number()), pages.getPageFormat(page.number()));
        }
        return book;
    }
}
