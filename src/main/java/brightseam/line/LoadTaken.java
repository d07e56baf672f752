package brightseam.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A load that went into a bath.
 *
 * @param basket what it hung in
 * @param travellers what was in it, sorted
 * @param at when
 * @param fill into which fill
 * @param areaSquareMetres its wetted area, where known
 * @param joins whether its basket was in the bath already, so that it is no load more
 * @param named whether its travellers were named as suspects since
 */
public record LoadTaken(
        BinId basket,
        List<TravellerId> travellers,
        Moment at,
        int fill,
        Optional<BigDecimal> areaSquareMetres,
        boolean joins,
        boolean named) {

    /** Sorts the travellers. */
    public LoadTaken {
        travellers = travellers.stream().sorted().distinct().toList();
    }

    /** This load with the travellers of {@code earlier}, since when its basket is in. */
    LoadTaken with(LoadTaken earlier) {
        return new LoadTaken(basket, Stream.concat(earlier.travellers.stream(), travellers.stream()).toList(),
                earlier.at, fill, areaSquareMetres, joins, named);
    }

    LoadTaken asNamed() {
        return new LoadTaken(basket, travellers, at, fill, areaSquareMetres, joins, true);
    }
}
