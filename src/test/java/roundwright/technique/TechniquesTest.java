package roundwright.technique;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Terms;

class TechniquesTest {
    private static final Techniques CATALOGUE = Techniques.catalogue();

    /** The trade's list of what a course in the round teaches, in its order; a row may have grown into several techniques. */
    private static final List<List<String>> TRADE = List.of(
            List.of("holding-hook-and-yarn"),
            List.of("slip-knot"),
            List.of("chain"),
            List.of("double-crochet"),
            List.of("parts-of-a-stitch"),
            List.of("counting-stitches"),
            List.of("right-and-wrong-side"),
            List.of("stitch-marker"),
            List.of("magic-ring", "chain-start"),
            List.of("spiral-rounds"),
            List.of("increase"),
            List.of("reading-a-line"),
            List.of("even-rounds"),
            List.of("pulling-back"),
            List.of("decrease"),
            List.of("invisible-decrease"),
            List.of("front-loop-only", "back-loop-only"),
            List.of("colour-change"),
            List.of("placing-features"),
            List.of("stuffing"),
            List.of("closing-the-last-round"),
            List.of("fastening-off"),
            List.of("weaving-in-ends"),
            List.of("joined-rounds"),
            List.of("joining-parts"),
            List.of("sewing-on"),
            List.of("oval-start"),
            List.of("half-treble", "treble", "double-treble", "post-stitch", "bobble"),
            List.of("reading-a-chart"));

    @Test
    void hasEveryTechniqueOfTheTradesList() {
        assertEquals(29, TRADE.size());
        List<String> missing = TRADE.stream()
                .flatMap(List::stream)
                .filter(id -> CATALOGUE.get(id).isEmpty())
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void whatATechniqueNeedsComesBeforeIt() {
        Set<String> before = new HashSet<>();
        List<String> wrong = new ArrayList<>();
        for (Technique technique : CATALOGUE.all()) {
            technique.needs().all().stream()
                    .filter(need -> !before.contains(need))
                    .forEach(need -> wrong.add(technique.id() + " needs " + need));
            before.add(technique.id());
        }
        assertEquals(List.of(), wrong);
        Set<String> unknown = new HashSet<>();
        CATALOGUE.all().forEach(technique -> unknown.addAll(technique.needs().oneOf()));
        unknown.removeAll(before);
        assertEquals(Set.of(), unknown);
    }

    @Test
    void everyTechniqueIsTaughtInWordsForBothTermsAndBothHands() {
        for (Technique technique : CATALOGUE.all()) {
            assertFalse(technique.how().isEmpty(), technique.id());
            assertTrue(technique.right().isPresent() && technique.wrong().isPresent(), technique.id());
            assertTrue(technique.minutes() >= 1 && technique.minutes() <= 20, technique.id());
            for (Terms terms : Terms.values()) {
                assertFalse(technique.name(terms).isBlank(), technique.id());
                for (boolean left : new boolean[] {true, false}) {
                    said(technique, terms, left).forEach(sentence -> {
                        assertFalse(sentence.contains("{") || sentence.contains("}"), technique.id() + ": " + sentence);
                        assertTrue(Character.isUpperCase(sentence.charAt(0)) || sentence.startsWith("\""), sentence);
                        assertTrue(sentence.endsWith("."), technique.id() + ": " + sentence);
                    });
                }
            }
        }
    }

    private static Stream<String> said(Technique technique, Terms terms, boolean left) {
        return Stream.of(
                        technique.how(terms, left).stream(),
                        technique.right(terms, left).stream(),
                        technique.wrong(terms, left).stream())
                .flatMap(sentences -> sentences);
    }

    @Test
    void aPassageIsMirroredForALeftHandedStudent() {
        Passage passage =
                new Passage("Hold it in your {right} hand and go {anticlockwise}; {yarn over}, one {double-crochet}.");
        assertEquals(
                "Hold it in your right hand and go anticlockwise; yarn round hook, one double crochet.",
                passage.in(Terms.UK, false));
        assertEquals(
                "Hold it in your left hand and go clockwise; yarn over, one single crochet.",
                passage.in(Terms.US, true));
        assertEquals(
                "Hold it in your right hand and go counterclockwise; yarn over, one single crochet.",
                passage.in(Terms.US, false));
    }

    @Test
    void aStepForRightHandsIsNeverTheSameForLeftHandsWhereItNamesASide() {
        for (Technique technique : CATALOGUE.all()) {
            for (Passage step : technique.how()) {
                boolean named = step.template().matches("(?s).*\\{(?:right|left|clockwise|anticlockwise)}.*");
                assertEquals(named, !step.in(Terms.UK, true).equals(step.in(Terms.UK, false)), step.template());
            }
        }
    }

    record Written(String written, Terms terms, String id) {}

    static List<Written> written() {
        return List.of(
                new Written("magic ring", Terms.UK, "magic-ring"),
                new Written("Magic Ring", Terms.US, "magic-ring"),
                new Written("magic circle", Terms.UK, "magic-ring"),
                new Written("MR", Terms.US, "magic-ring"),
                new Written("magic ring (MR)", Terms.US, "magic-ring"),
                new Written("holding hook and yarn", Terms.US, "holding-hook-and-yarn"),
                new Written("double crochet", Terms.UK, "double-crochet"),
                new Written("double crochet", Terms.US, "treble"),
                new Written("single crochet", Terms.US, "double-crochet"),
                new Written("single crochet", Terms.UK, "double-crochet"),
                new Written("dc", Terms.UK, "double-crochet"),
                new Written("dc", Terms.US, "treble"),
                new Written("sc", Terms.UK, "double-crochet"),
                new Written("treble", Terms.US, "double-treble"),
                new Written("hdc", Terms.UK, "half-treble"),
                new Written("increases", Terms.UK, "increase"),
                new Written("the increase", Terms.UK, "increase"),
                new Written("back loops only", Terms.UK, "back-loop-only"),
                new Written("BLO", Terms.US, "back-loop-only"),
                new Written("color change", Terms.UK, "colour-change"),
                new Written("invisible-decrease", Terms.UK, "invisible-decrease"),
                new Written("sewing", Terms.US, "sewing-on"),
                new Written("bobble stitch", Terms.US, "bobble"));
    }

    @ParameterizedTest
    @MethodSource("written")
    void findsATechniqueByItsNamesInTheTermsThatHold(Written written) {
        assertEquals(
                Optional.of(written.id()),
                CATALOGUE.find(written.written(), written.terms()).map(Technique::id));
    }

    @Test
    void offersTheNameThatWasProbablyMeant() {
        assertEquals(Optional.of("magic ring"), CATALOGUE.suggest("magic rign", Terms.UK));
        assertEquals(Optional.of("single crochet"), CATALOGUE.suggest("single crotchet", Terms.US));
        assertEquals(Optional.empty(), CATALOGUE.suggest("knitting", Terms.UK));
    }

    @Test
    void aCoursesOwnTechniqueJoinsTheCatalogue() {
        Technique own = new Technique(
                "tassel",
                new Technique.Names("tassel", List.of()),
                new Technique.Names("tassel", List.of()),
                Technique.Needs.NOTHING,
                5,
                false,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        Techniques both = CATALOGUE.with(List.of(own));
        assertEquals(Optional.of(own), both.find("Tassel", Terms.UK));
        assertEquals(Optional.empty(), CATALOGUE.find("Tassel", Terms.UK));
        assertEquals(CATALOGUE.all().size() + 1, both.all().size());
    }

    record Slips(String from, String to, int slips) {}

    static List<Slips> slips() {
        return List.of(
                new Slips("tension", "tension", 0),
                new Slips("tensoin", "tension", 1),
                new Slips("tensin", "tension", 1),
                new Slips("hat", "hook", 3),
                new Slips("", "hook", 4));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void countsSlips(Slips slips) {
        assertEquals(slips.slips(), DidYouMean.slips(slips.from(), slips.to()));
        assertEquals(slips.slips(), DidYouMean.slips(slips.to(), slips.from()));
    }

    @Test
    void offersAWordOnlyWhereItIsNearEnough() {
        List<String> keys = List.of("hook", "yarn", "tension");
        assertEquals(Optional.of("tension"), DidYouMean.of("tensoin", keys));
        assertEquals(Optional.of("hook"), DidYouMean.of("hok", keys));
        assertEquals(Optional.empty(), DidYouMean.of("hat", keys));
        assertEquals(Optional.empty(), DidYouMean.of("", keys));
        assertEquals(Optional.empty(), DidYouMean.of("x".repeat(100_000), keys));
    }
}
