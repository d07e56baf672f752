package brightseam.session;

import brightseam.kernel.Syntax;

/**
 * One line of the session's list.
 *
 * @param kind what sort of thing is needed
 * @param key the traveller's label, or the key of the supply's type
 * @param title what people call it
 * @param count how many: 1 for a traveller
 */
public record Need(Item.Kind kind, String key, String title, int count) {

    /** Refuses missing or overlong texts and a count below 1. */
    public Need {
        key = Syntax.text("key", key, 40);
        title = Syntax.text("title", title, 80);
        if (count < 1) {
            throw new IllegalArgumentException("count below 1");
        }
    }

    /** Whether {@code item} is one of what is needed here. */
    public boolean isMetBy(Item item) {
        return kind == Item.Kind.SUPPLY
                ? item.kind() == Item.Kind.SUPPLY && item.type().equals(key)
                : item.hasTraveller() && item.label().equals(key);
    }
}
