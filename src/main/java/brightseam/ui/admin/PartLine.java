package brightseam.ui.admin;

import brightseam.bath.Density;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.part.Part;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A row of the register of parts: a part that has a shape, or one of an open kit that needs one.
 *
 * @param number the part's number
 * @param description what an open kit calls it; empty where no open kit has it
 * @param part its shape, where it was given one
 */
record PartLine(String number, String description, Optional<Part> part) {

    /** Those without a shape first, then by number. */
    static List<PartLine> of(Collection<Kit> openKits, Collection<Part> parts) {
        TreeMap<String, PartLine> lines = new TreeMap<>();
        openKits.stream().flatMap(kit -> kit.lines().stream())
                .forEach(line -> lines.put(line.partNumber(), bare(line)));
        parts.forEach(part -> lines.merge(part.number().value(),
                new PartLine(part.number().value(), "", Optional.of(part)),
                (bare, shaped) -> new PartLine(bare.number(), bare.description(), shaped.part())));
        return lines.values().stream()
                .sorted((one, other) -> Boolean.compare(one.part().isPresent(), other.part().isPresent()))
                .toList();
    }

    String shape() {
        return part.map(known -> ShapeEntry.words(known.shape())).orElse("NO SHAPE YET");
    }

    /** {@code 1 060 cm² outside, 1 005 cm² inside} of one piece. */
    String area() {
        return part.map(known -> known.wettedArea(1)).map(area -> centimetres(area.outsideSquareMetres()) + " outside"
                + (area.insideSquareMetres() > 0 ? ", " + centimetres(area.insideSquareMetres()) + " inside" : ""))
                .orElse("");
    }

    /** {@code 412 g weighed}, or what the shape weighs in grade 9. */
    String mass() {
        return part.map(known -> known.weighedGrams().map(grams -> Words.plain(grams) + " g weighed")
                .orElseGet(() -> known.massKilograms(1, Density.ofGrade("9")).map(kilograms ->
                        Math.round(1000 * kilograms) + " g in grade 9").orElseThrow())).orElse("");
    }

    private static PartLine bare(KitLine line) {
        return new PartLine(line.partNumber(), line.description(), Optional.empty());
    }

    private static String centimetres(double squareMetres) {
        return Words.quantity(BigDecimal.valueOf(Math.round(1e4 * squareMetres)), "cm²");
    }
}
