package brightseam.bins;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a traveller takes up in a bin; told by the caller, who knows the shape of its part.
 *
 * @param partNumber what its pieces are
 * @param pieces how many of them
 * @param areaSquareMetres wetted area of all of them; empty where their shape is not known
 * @param massKilograms mass of all of them; empty where their shape or the density of their metal is not known
 */
public record LotSize(
        String partNumber, int pieces, Optional<BigDecimal> areaSquareMetres, Optional<BigDecimal> massKilograms) {}
