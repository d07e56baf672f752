package brightseam.weld.shell;

import brightseam.weld.ColoursSeen;
import brightseam.weld.FindingNote;
import brightseam.weld.Lighting;
import brightseam.weld.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What an inspector says of a joint.
 *
 * @param verdict accept or reject
 * @param colours what was seen
 * @param findings what was seen besides
 * @param lighting in what light
 * @param photographsSha256 keys of the stored photographs
 * @param remark what is added
 */
public record Judging(Verdict verdict, ColoursSeen colours, List<FindingNote> findings, Lighting lighting,
        List<String> photographsSha256, Optional<String> remark) {

    /** Copies the lists. */
    public Judging {
        findings = List.copyOf(findings);
        photographsSha256 = List.copyOf(photographsSha256);
    }
}
