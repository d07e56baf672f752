/** Invariant: a reading is kept as it was taken, and found again as it was taken. Registers meters, keeps series. */
package brightseam.device.shell;
