package roundwright.desktop.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import roundwright.store.Unpacked;

/** Light or dark, and how large: puts the look on and changes it while the window is open. */
public enum Theme {
    LIGHT,
    DARK;

    /** Steps of the whole-window zoom. */
    private static final float[] ZOOMS = {1f, 1.1f, 1.25f, 1.5f, 1.75f, 2f};

    /** Whatever shows text of the body size. */
    private static final List<String> TEXT_KINDS = List.of(
            "TextField",
            "TextArea",
            "TextPane",
            "FormattedTextField",
            "ComboBox",
            "CheckBox",
            "RadioButton",
            "Table",
            "TableHeader",
            "List",
            "MenuItem",
            "Menu",
            "CheckBoxMenuItem",
            "PopupMenu",
            "ToolTip",
            "OptionPane",
            "Spinner",
            "FileChooser");

    private static boolean prepared;
    private static Optional<Path> fonts = Optional.empty();

    /** Puts this theme on at a zoom of 1 (100 %) to 2 (200 %). Open windows follow. */
    public void install(float zoom) {
        prepare();
        UIScale.setZoomFactor(nearest(zoom));
        boolean set = this == DARK ? FlatDarkLaf.setup() : FlatLightLaf.setup();
        if (!set) {
            throw new IllegalStateException("the look " + this + " cannot be put on");
        }
        refresh();
    }

    /** Unpacks the typeface there once: read from where it is packed it would be written to a file of its own at every start. */
    public static void keepFontsIn(Path folder) {
        fonts = Optional.of(folder);
    }

    public static boolean dark() {
        return FlatLaf.isLafDark();
    }

    public static float zoom() {
        return UIScale.getZoomFactor();
    }

    /** The next larger zoom; the largest stays. */
    public static void zoomIn() {
        zoomTo(UIScale.zoomIn());
    }

    public static void zoomOut() {
        zoomTo(UIScale.zoomOut());
    }

    public static void zoomReset() {
        zoomTo(UIScale.zoomReset());
    }

    private static void zoomTo(boolean changed) {
        if (changed) {
            refresh();
        }
    }

    private static void refresh() {
        FontUIResource body = new FontUIResource(Type.BODY.font());
        for (String kind : TEXT_KINDS) {
            UIManager.put(kind + ".font", body);
        }
        UIManager.put("Button.font", new FontUIResource(Type.SMALL_STRONG.font()));
        FlatLaf.updateUI();
    }

    /** Gives the look of now to a component that is kept but not shown, for a change of look reaches only what is shown. */
    public static void dressAside(Component kept, Component shown) {
        if (kept != null && !SwingUtilities.isDescendingFrom(kept, shown)) {
            SwingUtilities.updateComponentTreeUI(kept);
        }
    }

    private static void prepare() {
        if (prepared) {
            return;
        }
        prepared = true;
        // two styles of six: the others would be read for nothing
        FontUtils.registerFontFamilyLoader(FlatInterFont.FAMILY, () -> installFont(FlatInterFont.STYLE_REGULAR));
        FontUtils.registerFontFamilyLoader(
                FlatInterFont.FAMILY_SEMIBOLD, () -> installFont(FlatInterFont.STYLE_SEMIBOLD));
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.registerCustomDefaultsSource("roundwright.desktop.look");
        UIScale.setSupportedZoomFactors(ZOOMS);
    }

    private static void installFont(String style) {
        try {
            Path file = Unpacked.file(
                    fonts.orElseThrow(() -> new NoSuchFileException(style)).resolve(style), () -> packed(style));
            GraphicsEnvironment.getLocalGraphicsEnvironment()
                    .registerFont(Font.createFont(Font.TRUETYPE_FONT, file.toFile()));
        } catch (IOException | FontFormatException cannot) {
            FlatInterFont.installStyle(style);
        }
    }

    private static InputStream packed(String style) {
        return FlatInterFont.class.getResourceAsStream(style);
    }

    private static float nearest(float zoom) {
        float best = ZOOMS[0];
        for (float step : ZOOMS) {
            best = Math.abs(step - zoom) < Math.abs(best - zoom) ? step : best;
        }
        return best;
    }
}
