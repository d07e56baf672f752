package brightseam.chamber;

import brightseam.kernel.Moment;
import java.math.BigDecimal;

/**
 * What the last leak test found.
 *
 * @param at when it was entered
 * @param airLitresPerMinute how much air leaks in, at the chamber's pressure and temperature; not below zero
 * @param how how it was found, such as {@code fit of the purge of CS-0012}
 * @param by who signed
 */
public record LeakTest(Moment at, BigDecimal airLitresPerMinute, String how, String by) {}
