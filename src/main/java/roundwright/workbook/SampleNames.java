package roundwright.workbook;

import java.util.List;

/** Invented people for a group to try things out with. */
final class SampleNames {
    /** Given names from many places; nobody in particular. */
    static final List<String> ALL = List.of(
            "Amina",
            "Bram",
            "Chiara",
            "Dilnoza",
            "Eero",
            "Folasade",
            "Goran",
            "Hanako",
            "Inés",
            "Jakub",
            "Kalea",
            "Lindiwe",
            "Mateo",
            "Nilufar",
            "Oisín",
            "Priya",
            "Quyên",
            "Rangi",
            "Søren",
            "Tariq",
            "Ulla",
            "Violeta",
            "Wanjiru",
            "Yusuf");

    private SampleNames() {}
}
