package brightseam.evidence;

import brightseam.report.RecordMark;
import java.util.List;
import java.util.Optional;

/** Whether what a scanner read off a paper belongs to a file. */
final class PaperCheck {

    private PaperCheck() {}

    /** How the paper stands to the file; a misfit where it is another record, or the file has fewer entries. */
    static Checked<Optional<Proof.Paper>> of(RecordMark mark, Evidence evidence, Heads heads, List<ReadEntry> own) {
        if (!mark.traveller().equals(evidence.traveller())) {
            return differs("the traveller", mark.traveller().value(), evidence.traveller().value());
        }
        if (mark.entries() > own.size()) {
            return differs("the number of entries", String.valueOf(mark.entries()), String.valueOf(own.size()));
        }
        String hash = own.get((int) mark.entries() - 1).entry().hash();
        if (!hash.equals(mark.hash())) {
            return differs("the hash of entry " + mark.entries(), mark.hash(), hash);
        }
        Optional<RecordMark.Sealed> paperHead = mark.sealed();
        boolean sameSize = paperHead.filter(head -> head.size() == heads.checkpoint().size()).isPresent();
        String root = heads.checkpoint().root().hex();
        if (sameSize && !paperHead.get().root().equals(root)) {
            return differs("the root of the ledger at " + heads.checkpoint().size() + " entries",
                    paperHead.get().root(), root);
        }
        return new Checked.Right<>(Optional.of(new Proof.Paper(mark.entries(), sameSize)));
    }

    private static Checked<Optional<Proof.Paper>> differs(String what, String paper, String file) {
        return new Checked.Wrong<>(new Misfit.MarkDiffers(what, paper, file));
    }
}
