/**
 * Invariant: arithmetic only; every number carries its unit in its name, nothing is rounded on the way, and a value
 * that cannot exist is refused when it is made.
 *
 * <p>Areas and masses of parts, metal removed and etch rates, soaks, titanium carried into a bath, titration of nitric
 * and hydrofluoric acid, and make-up additions. Physics is done in binary floating point, because its inputs are
 * measured; certificates and limits stay decimals, elsewhere. An answer that can be "no" is a sealed type that says
 * why. What a bath may be used for, and when it locks, is not decided here.
 */
package brightseam.bath;
