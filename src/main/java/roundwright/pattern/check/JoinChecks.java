package roundwright.pattern.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;
import roundwright.pattern.Verdict;

/** Whether a part that goes on from another, or is joined to it, has the stitches that the other ends with. */
final class JoinChecks {
    private static final Pattern GOES_ON = Pattern.compile(
            "(?i)\\b(go(es|ing)? on|carr(y|ies) on|continu\\w*|work(ed|ing)? (straight |directly )?(on|onto|on to|from)|"
                    + "pick up|join (it|yarn|the yarn|again|in)|starts? (on|from))\\b");
    private static final Pattern PREVIOUS = Pattern.compile("(?i)\\b(go(es|ing)? on|carr(y|ies) on|continu\\w*)\\b");
    private static final Pattern OF_ROUND = Pattern.compile("(?i)\\b(?:rounds?|rnds?|r)\\.? ?(\\d{1,4})\\b");
    private static final Pattern MATCHING = Pattern.compile(
            "(?i)\\b(edge to edge|rim to rim|stitch (for|by|to) stitch|st (for|by|to) st|last rounds|open ends?|together)\\b");

    private final roundwright.pattern.Pattern pattern;
    private final PatternChecks checks;
    private final PartNames names;

    JoinChecks(roundwright.pattern.Pattern pattern, PatternChecks checks) {
        this.pattern = pattern;
        this.checks = checks;
        this.names = new PartNames(pattern);
    }

    void check(Part part) {
        goesOn(part);
        for (Line line : part.lines()) {
            if (Shape.has(line, Feature.SEW) && MATCHING.matcher(line.text()).find()) {
                sewn(line);
            }
            limbs(part, line);
        }
    }

    /** Where another part ends: its name and the count that it offers. */
    private record Base(String name, int count) {}

    private void goesOn(Part part) {
        Optional<Round> first = part.rounds().stream().findFirst();
        first.filter(round -> round.line().verdict() != Verdict.DOES_NOT_ADD_UP && !begins(round.line()))
                .ifPresent(round -> base(part, round).ifPresent(base -> compare(round.line(), base)));
    }

    private static boolean begins(Line line) {
        return line.makes().isEmpty()
                || Shape.has(line, Feature.MAGIC_RING)
                || Shape.has(line, Feature.CHAIN_START)
                || Shape.has(line, Feature.RING_OF_CHAINS)
                || Shape.has(line, Feature.FOUNDATION_CHAIN)
                || Shape.has(line, Feature.IN_SPACES);
    }

    /** A round that uses several times what the other part offers is worked round several such parts. */
    private void compare(Line line, Base base) {
        int takes = line.takes().orElse(0) > 0
                ? line.takes().getAsInt()
                : line.makes().orElse(0);
        boolean several = takes % base.count() == 0;
        if (takes > base.count() && !several) {
            checks.warning(line, "goes-on-too-many", takes, base.name(), base.count());
        } else if (takes < base.count() && !Shape.has(line, Feature.TURNED)) {
            checks.warning(line, "goes-on-too-few", takes, base.name(), base.count(), base.count() - takes);
        }
    }

    private Optional<Base> base(Part part, Round first) {
        for (PartItem item : part.items()) {
            String text = item.line().text();
            if (GOES_ON.matcher(text).find()) {
                return named(part, text);
            }
            if (item == first) {
                break;
            }
        }
        return numberedOn(part, first);
    }

    private Optional<Base> named(Part part, String text) {
        Optional<Part> named = names.others(part, text).stream().findFirst();
        Optional<Part> target = named.isPresent() || !PREVIOUS.matcher(text).find() ? named : before(part);
        Matcher round = OF_ROUND.matcher(text);
        if (round.find() && text.stripLeading().indexOf(round.group()) > 0) {
            int number = Integer.parseInt(round.group(1));
            return named.or(() -> before(part))
                    .flatMap(from -> from.round(number).flatMap(below -> base(from, below.count())));
        }
        return target.flatMap(from -> base(from, Shape.end(from)));
    }

    /** Rounds that are numbered on from the part above go on from it: a heading or a blank line stands between them, no more. */
    private Optional<Base> numberedOn(Part part, Round first) {
        return before(part)
                .filter(above ->
                        first.line().label().isPresent() && !above.rounds().isEmpty())
                .filter(above -> above.rounds().get(above.rounds().size() - 1).number() + 1 == first.number())
                .filter(above -> above.lines().stream().noneMatch(line -> Shape.has(line, Feature.FASTEN_OFF)))
                .flatMap(above -> base(above, Shape.end(above)));
    }

    private static Optional<Base> base(Part part, OptionalInt count) {
        return count.isPresent() && count.getAsInt() > 0
                ? Optional.of(new Base(part.name(), count.getAsInt()))
                : Optional.empty();
    }

    private Optional<Part> before(Part part) {
        int index = pattern.parts().indexOf(part);
        return index > 0 ? Optional.of(pattern.parts().get(index - 1)) : Optional.empty();
    }

    /** Edges that are sewn stitch to stitch have equally many. */
    private void sewn(Line line) {
        List<Part> sewn = names.in(line.text());
        if (sewn.size() != 2) {
            return;
        }
        OptionalInt one = Shape.end(sewn.get(0));
        OptionalInt other = Shape.end(sewn.get(1));
        if (one.isPresent() && other.isPresent() && one.getAsInt() != other.getAsInt()) {
            checks.remark(
                    line,
                    "sewn-unequal",
                    sewn.get(0).name(),
                    one.getAsInt(),
                    sewn.get(1).name(),
                    other.getAsInt());
        }
    }

    /** A round that is worked round limbs uses no more stitches of each than it has. */
    private void limbs(Part part, Line line) {
        if (line.makes().isEmpty() || line.verdict() == Verdict.DOES_NOT_ADD_UP) {
            return;
        }
        for (PartNames.Use use : names.uses(part, line.text())) {
            int has = Shape.end(use.part()).orElse(0);
            if (has > 0 && use.stitches() > has) {
                checks.warning(line, "limb-too-many", use.stitches(), use.part().name(), has);
            } else if (has > 0 && use.stitches() < has && use.around()) {
                checks.remark(line, "limb-too-few", use.stitches(), use.part().name(), has);
            }
        }
    }
}
