/**
 * Invariant: the chamber's screens show one thing to do, decide nothing, and never offer what the services refuse; what
 * is measured is shown with its limit, its meter and its age.
 *
 * <p>{@code ChamberCard} and {@code Live} are what the screens show, as data: the card changes when something is done,
 * what is live changes every second. The faces draw them; {@code ChamberModel} makes them from the services.
 */
package brightseam.ui.chamber;
