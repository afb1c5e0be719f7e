package roundwright.desktop.look;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;
import roundwright.wording.Wording;

/** A card with something fixed at its top and foot, and between them what scrolls when there is little height. */
public class PageCard extends Card implements Flowing {
    private static final double LEAST_BODY = 150;

    private final JComponent body;
    private final JScrollPane scroll;

    public PageCard(JComponent body) {
        super(new BorderLayout());
        this.body = body;
        this.scroll = new JScrollPane(
                body,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        if (!(body instanceof JTable)) {
            scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        }
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.setFocusable(false);
        scroll.addFocusListener(new Keys.RepaintOnFocus(this));
        scroll.getAccessibleContext().setAccessibleName(Wording.of("desktop").say("card-scrolls"));
        add(scroll, BorderLayout.CENTER);
    }

    /** What stands above and does not scroll. */
    public PageCard top(JComponent top) {
        add(top, BorderLayout.NORTH);
        return this;
    }

    /** What stands below and does not scroll. */
    public PageCard foot(JComponent foot) {
        add(foot, BorderLayout.SOUTH);
        return this;
    }

    public JScrollPane scroll() {
        return scroll;
    }

    /** What scrolls can be reached by keyboard; the card then shows that it has the focus. */
    @Override
    protected void paintChildren(java.awt.Graphics graphics) {
        super.paintChildren(graphics);
        if (scroll.hasFocus()) {
            java.awt.Graphics2D smooth = Space.smooth(graphics);
            smooth.setColor(Tone.PINE.color());
            new Rounded(getWidth(), getHeight(), Space.arc()).draw(smooth, Space.points(2));
            smooth.dispose();
        }
    }

    @Override
    public int heightFor(int width) {
        Insets insets = getInsets();
        int inner = width - insets.left - insets.right;
        int height = insets.top + insets.bottom;
        for (Component component : getComponents()) {
            height += !component.isVisible()
                    ? 0
                    : component == scroll ? bodyHeight(inner) : Flowing.heightOf(component, inner);
        }
        return height;
    }

    private int bodyHeight(int width) {
        int height = Flowing.heightOf(body, width);
        if (body instanceof JTable table) {
            height += table.getTableHeader().getPreferredSize().height + Space.of(2);
        }
        return Math.max(height, Space.points(leastBody()));
    }

    /** The height in points that is kept for what scrolls however little there is of it. */
    protected double leastBody() {
        return LEAST_BODY;
    }

    @Override
    public void doLayout() {
        Insets insets = getInsets();
        int inner = getWidth() - insets.left - insets.right;
        BorderLayout layout = (BorderLayout) getLayout();
        int top = place(layout.getLayoutComponent(BorderLayout.NORTH), insets.top, inner);
        Component foot = layout.getLayoutComponent(BorderLayout.SOUTH);
        int footHeight = foot == null || !foot.isVisible() ? 0 : Flowing.heightOf(foot, inner);
        int bottom = getHeight() - insets.bottom - footHeight;
        place(foot, bottom, inner);
        int high = Math.max(0, bottom - insets.top - top);
        scroll.setBounds(insets.left, insets.top + top, inner, high);
        boolean scrolls = !(body instanceof JTable) && Flowing.heightOf(body, inner) > high;
        scroll.setFocusable(scrolls);
    }

    private int place(Component component, int y, int width) {
        if (component == null || !component.isVisible()) {
            return 0;
        }
        int height = Flowing.heightOf(component, width);
        component.setBounds(getInsets().left, y, width, height);
        return height;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(480);
        return new Dimension(width, heightFor(width));
    }
}
