package brightseam.weld;

import brightseam.kernel.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * What a judgement is decided on besides what the inspector says.
 *
 * @param scale colours, tables, findings and light
 * @param lightMeter what stands against the light meter: not known, calibration over
 * @param photographsMissing those of the photographs that are not stored
 * @param useAsIs the disposition that lets the joint stand against the ruling, in words
 */
public record JudgeFacts(
        ColourScale scale, List<Refusal> lightMeter, List<String> photographsMissing, Optional<String> useAsIs) {

    /** Copies the lists. */
    public JudgeFacts {
        lightMeter = List.copyOf(lightMeter);
        photographsMissing = List.copyOf(photographsMissing);
    }
}
