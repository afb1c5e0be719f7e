package roundwright.notation;

/** How much a problem matters: an error must be mended, a warning should be looked at, a remark may be of use. */
public enum Severity {
    ERROR,
    WARNING,
    REMARK
}
