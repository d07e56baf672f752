package brightseam.evidence;

import brightseam.kernel.TravellerId;
import brightseam.ledger.StreamName;
import brightseam.report.RecordMark;
import java.util.Optional;

/** The small sample for tests of other packages. */
public final class Samples {

    private static final SampleLedger LEDGER = SampleLedger.small();

    private Samples() {}

    /** The evidence of T-1042 as a file. */
    public static byte[] file() {
        return EvidenceForm.write(LEDGER.evidence());
    }

    /** The key that signed its checkpoint. */
    public static String key() {
        return SampleLedger.KEY.verifier().text();
    }

    /** Another shop's key. */
    public static String otherKey() {
        return SampleLedger.NEXT_KEY.verifier().text();
    }

    /** The text whose SHA-256 the approval of the procedure states. */
    public static String procedureText() {
        return SampleLedger.PROCEDURE;
    }

    /** The hash of the record's last entry. */
    public static String lastHash() {
        return LEDGER.of(new StreamName("traveller/T-1042")).getLast().hash();
    }

    /** The mark of a paper that was printed with the file. */
    public static String mark() {
        Verdict verdict = new EvidenceVerifier(java.util.List.of(), Optional.empty()).verify(file());
        String root = ((Verdict.Fits) verdict).proof().head().root().hex();
        return new RecordMark(new TravellerId("T-1042"), 5, lastHash(),
                Optional.of(new RecordMark.Sealed(LEDGER.size(), root))).payload();
    }
}
