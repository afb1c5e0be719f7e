package roundwright.sheet.chart;

import java.awt.Color;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.Stroke;

/** The piece lying on its side: a column a round, as high as its stitch count, the parts one after another. */
public final class PiecePicture {
    private static final Color[] WOOL = {
        new Color(0xC9B892), new Color(0xD8876B), new Color(0xDDB45E), new Color(0x8FB0CF), new Color(0xA3BC8B)
    };
    private static final double PART_GAP = 1.5;
    private static final double WIDEST_COLUMN = 12;

    private PiecePicture() {}

    /** The piece in a frame of that size in points; empty columns where a count is not known. */
    public static Picture of(Pattern pattern, double width, double height, String words) {
        int rounds =
                pattern.parts().stream().mapToInt(part -> part.rounds().size()).sum();
        int most = pattern.parts().stream()
                .flatMap(part -> part.rounds().stream())
                .mapToInt(round -> round.count().orElse(0))
                .max()
                .orElse(1);
        double columns = rounds + PART_GAP * Math.max(0, pattern.parts().size() - 1);
        double column = Math.min(WIDEST_COLUMN, width / Math.max(1, columns));
        List<Stroke> strokes = new ArrayList<>();
        double x = (width - column * columns) / 2;
        for (int i = 0; i < pattern.parts().size(); i++) {
            Part part = pattern.parts().get(i);
            for (Round round : part.rounds()) {
                double tall = Math.max(0.5, height * round.count().orElse(0) / Math.max(1, most));
                strokes.add(new Stroke(
                        new RoundRectangle2D.Double(
                                x + column * 0.06,
                                (height - tall) / 2,
                                column * 0.88,
                                tall,
                                column * 0.6,
                                column * 0.6),
                        WOOL[i % WOOL.length],
                        0));
                x += column;
            }
            x += column * PART_GAP;
        }
        return new Picture(width, height, strokes, words);
    }
}
