/** What services of every feature share: the clock. Cores never see it; they are told the time. */
package brightseam.kernel.shell;
