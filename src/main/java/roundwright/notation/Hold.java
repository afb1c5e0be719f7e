package roundwright.notation;

/** Which part of a stitch below the hook goes under. */
public enum Hold {
    BOTH,
    FRONT,
    BACK,
    THIRD,
    FRONT_POST,
    BACK_POST
}
