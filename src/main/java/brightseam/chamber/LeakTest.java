package brightseam.chamber;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the last leak test, or the fit of a measured purge, found.
 *
 * @param at when it was entered
 * @param airLitresPerMinute how much air leaks in, at the chamber's pressure and temperature; not below zero
 * @param mixingEfficiency the share of the purge flow that counts, above 0; empty where only the leak was found
 * @param how how it was found, such as {@code fit of the purge of CS-0012}
 * @param by who signed
 */
public record LeakTest(
        Moment at, BigDecimal airLitresPerMinute, Optional<BigDecimal> mixingEfficiency, String how, String by) {}
