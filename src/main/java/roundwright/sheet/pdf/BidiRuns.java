package roundwright.sheet.pdf;

import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/** Splits a paragraph into stretches that run one way, in the order in which they are seen. */
final class BidiRuns implements BidiSplitter {
    private BidiTextRun[] runs = new BidiTextRun[0];

    @Override
    public void setParagraph(String paragraph, byte direction) {
        if (paragraph.isEmpty()) {
            runs = new BidiTextRun[] {new BidiTextRun(0, 0, direction)};
            return;
        }
        Bidi bidi = new Bidi(paragraph, flag(direction));
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        runs = new BidiTextRun[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            int start = bidi.getRunStart(i);
            runs[i] = new BidiTextRun(start, bidi.getRunLimit(i) - start, levels[i] % 2 == 0 ? LTR : RTL);
        }
        if (count > 1) {
            Bidi.reorderVisually(levels, 0, runs, 0, count);
        }
    }

    private static int flag(byte direction) {
        return direction == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
    }

    @Override
    public int countTextRuns() {
        return runs.length;
    }

    @Override
    public BidiTextRun getVisualRun(int index) {
        return runs[index];
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        Bidi bidi = new Bidi(paragraph, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        return bidi.baseIsLeftToRight() ? LTR : RTL;
    }
}
