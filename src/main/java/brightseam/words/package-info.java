/**
 * Invariant: every sentence that a person reads about a refusal is made here, from its code and evidence alone, so that
 * a screen today and a print in ten years say the same.
 */
package brightseam.words;
