/**
 * Invariant: arithmetic only; every number carries its unit in its name, pressures say whether they are absolute or
 * gauge, flows are litres of gas at the chamber's own pressure and temperature, and nothing is rounded on the way.
 *
 * <p>How argon drives air out of a chamber, its lock and what is joined to them; what a leak, the supply's impurity and
 * the opening of a door do to that; what a measured curve says of mixing and leak, and when it will reach a limit;
 * dew point and parts per million; and how much argon is in a cylinder or a dewar. An answer that can be "no" is a
 * sealed type that says why. Limits are not here: they are data of the welding procedure.
 *
 * <p>All of it describes gas for the weld, never for people: none of these numbers says that air may be breathed.
 */
package brightseam.purge;
