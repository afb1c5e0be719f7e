package roundwright.desktop.look;

/** A page that comes in two steps, so that neither keeps the window busy for long: first what it is for, then what stands beside that. */
public interface TwoSteps {
    /** Shows what stands beside; does nothing where it is shown already. */
    void beside();
}
