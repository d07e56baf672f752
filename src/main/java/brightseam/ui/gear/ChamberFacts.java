package brightseam.ui.gear;

import brightseam.chamber.Chamber;
import brightseam.chamber.ChamberLimits;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.Manifold;
import brightseam.chamber.Material;
import brightseam.chamber.MaterialRules;
import brightseam.chamber.Materials;
import brightseam.kernel.SupplyId;
import brightseam.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;

/** What the page of a chamber says about it. */
final class ChamberFacts {

    /** One line of a name and words. */
    record Fact(String name, String words) {}

    /** One limit and whose it is. */
    record Limit(String name, String value, String source) {}

    /** One material: what it is called, what to know about it. */
    record MaterialLine(String name, String words) {}

    private ChamberFacts() {}

    /** Volumes, flows, lock, argon and leak of {@code chamber}. */
    static List<Fact> gear(Chamber chamber, Instant now, ZoneId zone) {
        ChamberTerms terms = chamber.terms();
        Manifold manifold = terms.manifold();
        return List.of(
                new Fact("Inside", GasWords.plain(terms.volumeLitres(), "L") + ", and "
                        + GasWords.plain(terms.glovePortLitres(), "L") + " in the glove ports"),
                new Fact("Transfer lock", terms.lock().station() + ", "
                        + GasWords.plain(terms.lock().volumeLitres(), "L") + ": "
                        + GasWords.method(terms.lock().method())),
                new Fact("Argon flows", GasWords.plain(terms.flows().purgeLitresPerMinute(), "L/min") + " to purge, "
                        + GasWords.plain(terms.flows().holdLitresPerMinute(), "L/min") + " to hold, "
                        + GasWords.plain(terms.flows().lockLitresPerMinute(), "L/min") + " in the lock; gas at "
                        + GasWords.plain(terms.flows().temperatureCelsius(), "°C")),
                new Fact("Argon comes from", feeds(chamber)),
                new Fact("Stays in a source", stays(manifold)),
                new Fact("A session usually", "held fit for " + Words.duration(terms.usual().fit()) + ", the lock"
                        + " purged " + Words.count(terms.usual().lockPasses(), "time", "times")),
                new Fact("Leaks", leak(chamber, now, zone)));
    }

    /** Every limit with its source. */
    static List<Limit> limits(ChamberTerms terms) {
        ChamberLimits limits = terms.limits();
        return List.of(
                new Limit("Oxygen to weld", "at most " + GasWords.plain(limits.oxygenPpmToWeld().value(), "ppm"),
                        limits.oxygenPpmToWeld().source()),
                new Limit("Oxygen while hot, above it an excursion",
                        GasWords.plain(limits.oxygenPpmExcursion().value(), "ppm"),
                        limits.oxygenPpmExcursion().source()),
                new Limit("Moisture to weld", "at most " + GasWords.plain(limits.moisturePpm().value(), "ppm"),
                        limits.moisturePpm().source()),
                new Limit("Oxygen in the lock to open its inner door",
                        "at most " + GasWords.plain(terms.lock().oxygenPpmToOpen().value(), "ppm"),
                        terms.lock().oxygenPpmToOpen().source()),
                new Limit("Inside limits before it is fit", "for " + Words.duration(limits.dwell()),
                        limits.timesSource()),
                new Limit("Longest gap in the readings during an arc", Words.duration(limits.longestGap()),
                        limits.timesSource()),
                new Limit("Readings that are typed", "every " + Words.duration(limits.typedEvery()),
                        limits.timesSource()));
    }

    /** What may go in. */
    static List<MaterialLine> permitted(ChamberTerms terms, Materials materials) {
        return terms.permittedMaterials().stream().map(key -> new MaterialLine(materials.name(key),
                materials.find(key).map(Material::note).orElse(""))).toList();
    }

    /** What stays outside, what never goes in last; each with the reason. */
    static List<MaterialLine> outside(ChamberTerms terms, Materials materials) {
        return materials.all().stream().filter(one -> !terms.permittedMaterials().contains(one.key()))
                .sorted(java.util.Comparator.comparing((Material one) -> !one.mayBePermitted()))
                .map(one -> new MaterialLine(one.name(), MaterialRules.because(one)
                        .map(because -> "Never: " + because + ". ").orElse("Not on the list. ") + one.note())).toList();
    }

    private static String feeds(Chamber chamber) {
        String sources = chamber.connected().isEmpty() ? "nothing now" : chamber.connected().stream()
                .map(SupplyId::value).collect(Collectors.joining(", "));
        return sources + "; " + Words.count(chamber.terms().manifold().sourcesAtOnce(), "source", "sources")
                + " at once";
    }

    private static String stays(Manifold manifold) {
        return GasWords.plain(manifold.restPressureBarGauge(), "bar") + " in a cylinder, "
                + GasWords.plain(manifold.restLevelPercent(), "%") + " in a dewar" + manifold.retirePressureBarGauge()
                        .map(bar -> "; below " + GasWords.plain(bar, "bar") + " a cylinder is not connected any more")
                        .orElse("") + " (" + manifold.source() + ")";
    }

    private static String leak(Chamber chamber, Instant now, ZoneId zone) {
        return chamber.leak().map(test -> GasWords.plain(test.airLitresPerMinute(), "L/min") + " of air"
                + test.mixingEfficiency().map(share -> ", " + GasWords.percent(share.doubleValue())
                        + " of the flow counts").orElse("")
                + "; " + test.how() + ", " + Words.clockTime(test.at().wall(), now, zone) + " by " + test.by())
                .orElse("no leak test was entered: forecasts take it as tight");
    }
}
