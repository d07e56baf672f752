/**
 * Invariant: a page here decides nothing; it asks the services and says what they answered.
 *
 * <p>What the pages of leads and administrators share: the page round them, tables, forms, what is told after an
 * action, and files to take away.
 */
package brightseam.ui.desk;
