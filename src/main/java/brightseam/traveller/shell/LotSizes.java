package brightseam.traveller.shell;

import brightseam.bins.Bin;
import brightseam.bins.LotSize;
import brightseam.kernel.TravellerId;
import brightseam.material.shell.Heats;
import brightseam.part.shell.Parts;
import brightseam.traveller.Traveller;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.stereotype.Component;

/** Gathers what lots take up in a bin, from the shapes of their parts and the grade of their heat. */
@Component
class LotSizes {

    /** Areas to a square centimetre, masses to a tenth of a gram: finer than any drawing or scale of a shop. */
    private static final int DECIMALS = 4;

    private final Travellers travellers;
    private final Parts parts;
    private final Heats heats;

    LotSizes(Travellers travellers, Parts parts, Heats heats) {
        this.travellers = travellers;
        this.parts = parts;
        this.heats = heats;
    }

    /** Of everything in {@code bin} and of {@code coming}; nothing where its capacity does not ask for sizes. */
    Map<TravellerId, LotSize> in(Bin bin, Collection<TravellerId> coming) {
        Map<TravellerId, LotSize> sizes = new HashMap<>();
        if (bin.capacity().asksForSizes()) {
            TreeSet<TravellerId> lots = new TreeSet<>(bin.inside());
            lots.addAll(coming);
            lots.forEach(lot -> travellers.find(lot).ifPresent(card -> sizes.put(lot, of(card.traveller()))));
        }
        return sizes;
    }

    /** What a bath wets of {@code lots} together, square metres; empty where the shape of one is not known. */
    Optional<BigDecimal> areaSquareMetres(Collection<TravellerId> lots) {
        return lots.stream().map(lot -> travellers.find(lot).flatMap(card -> of(card.traveller()).areaSquareMetres()))
                .reduce(Optional.of(BigDecimal.ZERO), (sum, one) -> sum.flatMap(known -> one.map(known::add)));
    }

    /** As {@link #in}, with {@code coming}, which is not stored yet. */
    Map<TravellerId, LotSize> with(Bin bin, Traveller coming) {
        Map<TravellerId, LotSize> sizes = in(bin, List.of());
        if (bin.capacity().asksForSizes()) {
            sizes.put(coming.id(), of(coming));
        }
        return sizes;
    }

    private LotSize of(Traveller traveller) {
        String part = traveller.part().partNumber();
        int pieces = traveller.pieces().size();
        String grade = heats.find(traveller.heat()).map(heat -> heat.state().grade()).orElse("");
        return new LotSize(part, pieces, rounded(parts.areaSquareMetres(part, pieces)),
                rounded(parts.massKilograms(part, pieces, grade)));
    }

    private static Optional<BigDecimal> rounded(Optional<Double> value) {
        return value.map(exact -> new BigDecimal(exact).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros());
    }
}
