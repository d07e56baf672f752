package brightseam.bath;

/** What a fluoride method finds in a bath that holds titanium; a property of the shop's method, which has to say it. */
public enum FluorideBasis {
    /** Only fluoride that titanium has not bound. Hexafluorotitanate holds its fluoride against a usual buffer. */
    FREE,
    /** All fluoride, because the titanium was precipitated or the complex broken before: six are titanium's. */
    TOTAL
}
