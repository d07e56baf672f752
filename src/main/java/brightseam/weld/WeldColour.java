package brightseam.weld;

/**
 * One rung of the ladder of colours that a titanium weld shows, from a bright one to loose white oxide (common
 * practice).
 *
 * @param key its name in tables and records
 * @param name what it is called
 * @param swatch a colour of our own to show it by, {@code #rrggbb}
 * @param pattern the pattern of our own that tells it apart without its colour
 */
public record WeldColour(String key, String name, String swatch, String pattern) {}
