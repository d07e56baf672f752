package brightseam.ui.baths;

import brightseam.line.BathQuantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What the fields of an analysis come to.
 *
 * @param values what was found; empty where the readings contradict each other
 * @param workings how it came about
 * @param contradiction what is wrong with the readings
 */
record Worked(SortedMap<BathQuantity, BigDecimal> values, List<String> workings, Optional<String> contradiction) {}
