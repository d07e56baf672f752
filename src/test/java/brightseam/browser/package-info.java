/** The browser that tests drive: one for the whole run, found, installed or asked for, never done without. */
package brightseam.browser;
