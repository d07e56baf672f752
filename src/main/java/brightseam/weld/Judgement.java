package brightseam.weld;

import brightseam.kernel.Moment;
import brightseam.kernel.Syntax;
import brightseam.people.Signer;
import java.util.List;
import java.util.Optional;

/**
 * An inspector's verdict on a joint, with what it rests on.
 *
 * @param afterRun how many arcs the joint had then
 * @param verdict what was said
 * @param colours what was seen
 * @param findings what was seen besides
 * @param lighting in what light
 * @param photographsSha256 keys of the stored photographs
 * @param remark what the inspector adds
 * @param table the key of the table that the colours were held against
 * @param ruling what that table and the findings say
 * @param next what has to come next by them, in words; empty where nothing has
 * @param useAsIs the disposition that let a joint stand against the ruling
 * @param signer who said it
 * @param at when
 */
public record Judgement(
        int afterRun,
        Verdict verdict,
        ColoursSeen colours,
        List<FindingNote> findings,
        Lighting lighting,
        List<String> photographsSha256,
        Optional<String> remark,
        String table,
        Ruling ruling,
        List<String> next,
        Optional<String> useAsIs,
        Signer signer,
        Moment at) {

    /** The most photographs of one judgement. */
    public static final int PHOTOGRAPHS_MAX = 12;

    /** The longest remark. */
    public static final int REMARK_MAX = 400;

    /** Checks the remark, copies the lists and refuses more than {@link #PHOTOGRAPHS_MAX} photographs. */
    public Judgement {
        findings = List.copyOf(findings);
        photographsSha256 = photographsSha256.stream().distinct().toList();
        next = List.copyOf(next);
        remark = remark.map(text -> Syntax.text("remark", text, REMARK_MAX));
        if (photographsSha256.size() > PHOTOGRAPHS_MAX) {
            throw new IllegalArgumentException("at most " + PHOTOGRAPHS_MAX + " photographs");
        }
    }
}
