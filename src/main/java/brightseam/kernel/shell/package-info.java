/**
 * Invariant: services read the time from this clock alone; cores never see it, they are told the time.
 *
 * <p>What services of every feature share: the clock, tries by place, files for the owner alone.
 */
package brightseam.kernel.shell;
