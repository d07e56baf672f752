package brightseam.scan;

import brightseam.kernel.Refusal;

/** A scan that nothing could be made of. */
public record LabelDamaged(UnreadableReason reason) implements Refusal {

    @Override
    public String code() {
        return "label-damaged";
    }
}
