package roundwright.group.messages;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who sent a message.
 *
 * @param students whom it speaks for: one, two for a shared account, none where the name is nobody's of the group
 * @param teacher whether it is the teacher, whose numbers are no counts
 */
record Speaker(List<String> students, boolean teacher) {
    /** "Ruth (teacher)". */
    private static final Pattern ASIDE = Pattern.compile("\\s?\\((\\p{L}{1,20})\\)$");

    static final Speaker NOBODY = new Speaker(List.of(), false);

    static Speaker of(Optional<String> written, NameFinder names) {
        if (written.isEmpty()) {
            return NOBODY;
        }
        if (names.knowsNobody() && written.get().contains("@")) {
            return NOBODY;
        }
        String whole = address(written.get().strip());
        Matcher aside = ASIDE.matcher(whole);
        boolean called = aside.find() && Cues.is(Cue.TEACHER, Folding.fold(aside.group(1)));
        String name = ASIDE.matcher(whole).replaceFirst("");
        if (called
                || Cues.is(Cue.TEACHER, Folding.fold(name).split("[\\s.]+")[0])
                        && names.find(name).isEmpty()) {
            return new Speaker(List.of(), true);
        }
        List<String> several = several(name, names);
        if (several.size() > 1 || names.knowsNobody()) {
            return new Speaker(several, false);
        }
        return new Speaker(
                names.find(name).or(() -> somebodys(name, names)).map(List::of).orElse(several), false);
    }

    /** "kofi.mensa@example.org" without what an address has that a name has not. */
    private static String address(String written) {
        return written.replaceFirst("^(\\S+)@\\S+$", "$1").replaceAll("(?<=\\p{L})[._](?=\\p{L}{2})", " ");
    }

    /** "Mum of Bram", "Bram's mum". */
    private static Optional<String> somebodys(String name, NameFinder names) {
        return Arrays.stream(name.split("[\\s.]+"))
                .map(word -> names.exactly(word).or(() -> names.exactly(word.replaceFirst("['’]?s$", ""))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** "Cosmo & Ishbel": two students at one telephone. */
    private static List<String> several(String name, NameFinder names) {
        List<String> parts = List.of(name.split("\\s*(?:&|\\+|/|,|\\band\\b)\\s*"));
        if (names.knowsNobody()) {
            return parts.stream()
                    .map(String::strip)
                    .filter(part -> !part.isEmpty())
                    .toList();
        }
        return parts.stream()
                .map(names::find)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
