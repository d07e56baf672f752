/**
 * Invariant: an answer is read from the tables of contacts whole, and shown a page at a time with all of it counted.
 *
 * <p>The pages of the contact trace: from a thing to the pieces that it touched, from a piece to what touched it;
 * putting the answer under suspicion, and lifting a suspicion from many at once. Addresses stay as they are, so that
 * other pages link to them: {@code /trace?kind=bath&label=S-ACID-1&lot=fill+3},
 * {@code /trace?kind=traveller&label=T-1042&piece=2}, with {@code from} and {@code until} as local times in ISO 8601;
 * {@code kind} is a kind of thing in lower case, and {@code station} with a lot is the bath in its tank.
 */
package brightseam.ui.trace;
