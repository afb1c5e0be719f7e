package roundwright.notation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.notation.WrittenLine.Count;

/** What is being found out about one line while it is read. */
final class Reading {
    final String text;
    final Cursor cursor;
    final PlaceReader places;
    final Yarns yarns;
    /** How the stitches between increases change; null where the line has no word for "between". */
    final GapReader gaps;

    final List<Count> counts = new ArrayList<>();
    final List<Span> doubts = new ArrayList<>();
    final Set<Feature> features = EnumSet.noneOf(Feature.class);
    final Set<StitchName> names = EnumSet.noneOf(StitchName.class);

    /** The stitch that the words last named, for "… and in next 4". */
    StitchName lastName = StitchName.ANY;
    /** Whether the line has put numbers of stitches in brackets: "sc (12), inc". */
    boolean numbersInBrackets;
    /** Whether something is left out among the steps, which no sum can fill. */
    boolean hole;
    /** The step that was read last, a slip stitch too; null where none was. */
    StitchName lastStep;
    /** The loops that hold for what follows. */
    Hold hold = Hold.BOTH;
    /** Whether stitches without a place go into the ring that the line has made. */
    boolean ring;
    /** Whether a chain that the line made is being worked along. */
    boolean foundation;
    /** Whether anything has been worked into yet. */
    boolean begun;
    /** Chains of the foundation that the line made; 0 where it made none. */
    int chains;
    /** Whether the line says how many chains those are, and not "15 + 1" or "15 (17, 19)". */
    boolean chainsClear;
    /** The chain from the hook that the first stitch goes into; 0 where the line does not say. */
    int from;
    /** Chains of the ring that the line made of them; 0 where it made none. */
    int ringChains;

    boolean stitches;
    /** Whether a step of its own, not only a ring, has been read. */
    boolean worked;

    /** A step that is more than a slip stitch or a chain has been read. */
    boolean beyondSlips;

    boolean labelled;
    /** The place of the first token after the label. */
    int body;
    /** The line takes over the steps of another. */
    boolean taken;
    /** Whether the line has stated its count. */
    boolean counted;
    /** The starting chain as a choice still open. */
    boolean openStart;

    Habit startHabit = Habit.STARTING_CHAIN;
    /** What the line says of its starting chain: 1 that it counts, 0 that it does not. */
    OptionalInt startSaid = OptionalInt.empty();
    /** The line says that its starting chain counts. */
    boolean startCounts;
    /** The pattern says that a number alone is so many stitches. */
    final boolean numbersAreStitches;
    /** Rounds that the line is to be worked for ("for 6 rounds"); 0 where it does not say. */
    int rounds;
    /** Parts of the piece that the line has named as what its stitches go into. */
    int things;
    /** How many went into one stitch last, for "2 hdc in same st and each st around". */
    int lastEach = 1;

    Reading(ScannedLine line) {
        this.text = line.text();
        this.cursor = new Cursor(Tidy.of(line.tokens()));
        this.numbersAreStitches = line.vocabulary().numbersAreStitches();
        this.yarns = new Yarns(text, cursor);
        this.gaps = cursor.has(Meaning.BETWEEN) ? new GapReader(cursor) : null;
        this.places = new PlaceReader(this);
    }

    /** The last step if no words have said yet where it goes, and what it was read from. */
    Node unplaced;

    private Node.Work unplacedUnit;
    private int unplacedNumber;

    void unplaced(Node node, Node.Work unit, int number) {
        unplaced = node;
        unplacedUnit = unit;
        unplacedNumber = number;
    }

    /** The last step, now that words after it say where it goes: "2 dc, in each st". */
    Node placeLater(Place place) {
        boolean before = begun;
        begun = false;
        Node node = new Meant(this, unplacedUnit, unplacedNumber, false, false, place).node();
        begun |= before;
        unplaced = null;
        return node;
    }

    /** Puts the last step of the list, over a count or a note, into the place; false where it is not in the list. */
    boolean placeBehind(Items items, Place place) {
        for (int at = items.nodes.size() - 1; at >= 0 && unplaced != null; at--) {
            Node node = items.nodes.get(at);
            if (node == unplaced || node.span().start() == unplaced.span().start() && node.equals(unplaced)) {
                items.nodes.set(at, placeLater(place));
                return true;
            }
        }
        return false;
    }

    /** Whether any step has been read, or a ring begun. */
    boolean begun() {
        return worked || ring;
    }

    void doubt(Span span) {
        doubts.add(span);
    }

    /** Doubts what stands there for good: a step is missing, whatever the sums say. */
    void hole(Span span) {
        doubts.add(span);
        hole = true;
    }
}
