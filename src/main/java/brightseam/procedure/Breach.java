package brightseam.procedure;

/**
 * A draft that breaks a rule of sense.
 *
 * @param at where, as a JSON pointer (RFC 6901) into the file, such as {@code /steps/7/gap}
 * @param found what is there
 * @param expected what belongs there
 */
public record Breach(String at, String found, String expected) {}
