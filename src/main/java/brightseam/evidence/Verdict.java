package brightseam.evidence;

/** What a file of evidence came to. */
public sealed interface Verdict {

    /** Something does not fit; this is the first thing. */
    record Broken(Misfit first) implements Verdict {}

    /** Everything fits. Whether it also proves something is in {@link Proof#isVouchedFor()}. */
    record Fits(Proof proof) implements Verdict {}
}
