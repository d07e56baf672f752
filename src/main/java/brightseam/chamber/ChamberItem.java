package brightseam.chamber;

import brightseam.kernel.SupplyId;
import java.util.Optional;

/**
 * Something that would go into a chamber.
 *
 * @param supply its label
 * @param title what people call it
 * @param material a key of the table of materials; empty where nobody says what it is made of
 */
public record ChamberItem(SupplyId supply, String title, Optional<String> material) {}
