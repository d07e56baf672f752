/**
 * Invariant: everything here is invented, exists in the demo shop alone, and changes the shop only through the same
 * services as its people do.
 *
 * <p>The demo shop Halcyon Deep Frames: its people, bins, heats, kits and past, and the panel that hurries its clock.
 */
package brightseam.demo;
