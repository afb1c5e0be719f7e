package roundwright.notation;

/** The stitches of the trade, named as the UK names them. {@link #name(Terms)} gives the words of either terms. */
public enum Stitch {
    CHAIN("ch", "chain", "ch", "chain", 0),
    SLIP_STITCH("ss", "slip stitch", "sl st", "slip stitch", 0.3),
    DOUBLE_CROCHET("dc", "double crochet", "sc", "single crochet", 1),
    HALF_TREBLE("htr", "half treble", "hdc", "half double crochet", 1.5),
    TREBLE("tr", "treble", "dc", "double crochet", 2),
    DOUBLE_TREBLE("dtr", "double treble", "tr", "treble", 3),
    TRIPLE_TREBLE("trtr", "triple treble", "dtr", "double treble", 4),
    QUADRUPLE_TREBLE("qtr", "quadruple treble", "trtr", "triple treble", 5),
    /** Double crochet worked backwards, from the other side (crab stitch). */
    CRAB_STITCH("crab st", "crab stitch", "rev sc", "reverse single crochet", 1),
    BOBBLE("bobble", "bobble", "bobble", "bobble", 2),
    POPCORN("popcorn", "popcorn", "popcorn", "popcorn", 2),
    PUFF("puff", "puff stitch", "puff", "puff stitch", 1.5),
    CLUSTER("cluster", "cluster", "cluster", "cluster", 2),
    SHELL("shell", "shell", "shell", "shell", 2),
    PICOT("picot", "picot", "picot", "picot", 1),
    V_STITCH("V-st", "V-stitch", "V-st", "V-stitch", 2),
    /** A stitch that the pattern defines for itself. */
    OTHER("st", "stitch", "st", "stitch", 1);

    private final String[] written;
    private final String[] names;
    private final double height;

    Stitch(String writtenUk, String nameUk, String writtenUs, String nameUs, double height) {
        this.written = new String[] {writtenUk, writtenUs};
        this.names = new String[] {nameUk, nameUs};
        this.height = height;
    }

    /** How the stitch is written short in the terms: {@code DOUBLE_CROCHET} is "dc" in UK, "sc" in US. */
    public String written(Terms terms) {
        return written[terms.ordinal()];
    }

    /** The stitch's name in whole words. */
    public String name(Terms terms) {
        return names[terms.ordinal()];
    }

    /** Height of the stitch in heights of a UK double crochet (US single crochet). Source: the trade's table of basic stitches. */
    public double height() {
        return height;
    }
}
