package roundwright.course.preparation;

import java.util.Locale;
import java.util.Set;

/** Small things besides yarn and hook, and the techniques that need them. */
enum Notion {
    MARKER("stitch-marker", "spiral-rounds"),
    STUFFING("stuffing"),
    FEATURES("placing-features"),
    NEEDLE("sewing-on", "weaving-in-ends", "closing-the-last-round", "joining-parts"),
    PINS("sewing-on"),
    SCISSORS("fastening-off", "colour-change", "sewing-on", "weaving-in-ends");

    private final Set<String> techniques;

    Notion(String... techniques) {
        this.techniques = Set.of(techniques);
    }

    boolean neededFor(Set<String> used) {
        return used.stream().anyMatch(techniques::contains);
    }

    /** Names it in the catalogue of sentences. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
