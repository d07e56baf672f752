package brightseam.kernel;

import java.util.Objects;
import java.util.Optional;

/**
 * Where an event came from: when, by whose badge, on which tablet, and whether the shop was a demo.
 *
 * @param at the server's moment of the decision
 * @param by who was signed in, or the badge {@code SHOP} where the server itself noticed something
 * @param tablet the tablet's label, or {@code server}
 * @param demo true for everything recorded in a demo shop; printed wherever the event is
 * @param label how the label came in that set it off, where a label did
 */
public record Origin(Moment at, BadgeId by, String tablet, boolean demo, Optional<LabelEntry> label) {

    /** The badge under which the server records what it notices by itself, such as an overrun hold. */
    public static final BadgeId SHOP = new BadgeId("SHOP");

    /** How the tablet of an event begins that came from another of the shop's systems; its name follows. */
    public static final String SYSTEM = "system ";

    /** Refuses missing parts and a tablet label of more than 40 characters. */
    public Origin {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(by, "by");
        Syntax.text("tablet", tablet, 40);
        label = label == null ? Optional.empty() : label;
    }

    /** The shop system that it came from, for the person who answers for that; empty where a person did it. */
    public Optional<String> system() {
        return tablet.startsWith(SYSTEM) ? Optional.of(tablet.substring(SYSTEM.length())) : Optional.empty();
    }

    /** An origin that no label set off. */
    public Origin(Moment at, BadgeId by, String tablet, boolean demo) {
        this(at, by, tablet, demo, Optional.empty());
    }
}
