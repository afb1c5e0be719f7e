package roundwright.notation;

/**
 * A stitch as a writer names it. Which stitch the name means depends on the terms: {@code DC} is a double crochet in
 * UK and a treble in US terms.
 */
public enum StitchName {
    SC(Stitch.DOUBLE_CROCHET, Stitch.DOUBLE_CROCHET, Terms.US),
    HDC(Stitch.HALF_TREBLE, Stitch.HALF_TREBLE, Terms.US),
    DC(Stitch.DOUBLE_CROCHET, Stitch.TREBLE, null),
    HTR(Stitch.HALF_TREBLE, Stitch.HALF_TREBLE, Terms.UK),
    TR(Stitch.TREBLE, Stitch.DOUBLE_TREBLE, null),
    DTR(Stitch.DOUBLE_TREBLE, Stitch.TRIPLE_TREBLE, null),
    TRTR(Stitch.TRIPLE_TREBLE, Stitch.QUADRUPLE_TREBLE, null),
    QTR(Stitch.QUADRUPLE_TREBLE, Stitch.QUADRUPLE_TREBLE, Terms.UK),
    CHAIN(Stitch.CHAIN),
    SLIP(Stitch.SLIP_STITCH),
    CRAB(Stitch.CRAB_STITCH),
    BOBBLE(Stitch.BOBBLE),
    POPCORN(Stitch.POPCORN),
    PUFF(Stitch.PUFF),
    CLUSTER(Stitch.CLUSTER),
    SHELL(Stitch.SHELL),
    VSTITCH(Stitch.V_STITCH),
    PICOT(Stitch.PICOT),
    /** "3 in each", "2 in next": whatever stitch the round is worked in. */
    ANY(null),
    /** A stitch the pattern defines. */
    OTHER(Stitch.OTHER);

    private final Stitch uk;
    private final Stitch us;
    private final Terms only;

    StitchName(Stitch same) {
        this(same, same, null);
    }

    StitchName(Stitch uk, Stitch us, Terms only) {
        this.uk = uk;
        this.us = us;
        this.only = only;
    }

    /** The stitch that the name means in the terms; {@code ANY} is the terms' short stitch of rounds. */
    public Stitch in(Terms terms) {
        if (this == ANY) {
            return Stitch.DOUBLE_CROCHET;
        }
        return terms == Terms.UK ? uk : us;
    }

    /** Whether only writers of these terms use the name. */
    public boolean only(Terms terms) {
        return only == terms;
    }
}
