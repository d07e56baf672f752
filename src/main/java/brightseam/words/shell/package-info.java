/** Reads the shop's words from the shared tables. */
package brightseam.words.shell;
