package brightseam.line;

import brightseam.kernel.Moment;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Makes the next state of a bath out of an event: a draft of the state before, changed and closed again. */
final class BathFold {

    private final Bath before;
    private BathTerms terms;
    private Fill fill;
    private Optional<Analysis> lastAnalysis;
    private Optional<Analysis> lastGood;
    private TreeSet<String> samples;
    private List<LoadTaken> loads;
    private List<LoadTaken> inside;
    private List<BathLock> locks;
    private Optional<Moment> strengthenedAt;
    private BigDecimal titaniumGramPerLitre;

    private BathFold(Bath before) {
        this.before = before;
        this.terms = before.terms();
        this.fill = before.fill();
        this.lastAnalysis = before.lastAnalysis();
        this.lastGood = before.lastGood();
        this.samples = new TreeSet<>(before.samples());
        this.loads = new ArrayList<>(before.loads());
        this.inside = new ArrayList<>(before.inside());
        this.locks = new ArrayList<>(before.locks());
        this.strengthenedAt = before.strengthenedAt();
        this.titaniumGramPerLitre = before.titaniumGramPerLitre();
    }

    static Bath evolve(Optional<Bath> before, BathEvent event) {
        if (event instanceof BathEvent.Registered first) {
            return new Bath(first.station(), first.liquid(), first.volumeLitres(), first.basketsAtOnce(),
                    first.terms(), new Fill(1, first.origin().at()), Optional.empty(), Optional.empty(),
                    new TreeSet<>(), List.of(), List.of(), List.of(), Optional.empty(), BigDecimal.ZERO);
        }
        Bath known = before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.station()));
        return new BathFold(known).after(event);
    }

    private Bath after(BathEvent event) {
        switch (event) {
            case BathEvent.Registered ignored -> { }
            case BathEvent.TermsChanged changed -> terms = changed.terms();
            case BathEvent.MadeUp made -> madeUp(made);
            case BathEvent.Analysed analysed -> analysed(analysed);
            case BathEvent.Added added -> strengthenedAt = added.addition().addend().strengthens()
                    ? Optional.of(added.origin().at()) : strengthenedAt;
            case BathEvent.TakenIn taken -> takenIn(taken);
            case BathEvent.Locked locked -> locks.add(new BathLock(
                    locked.cause(), locked.reason(), locked.origin().at(), locked.origin().by()));
            case BathEvent.Unlocked unlocked -> locks.removeIf(lock -> lock.cause() == unlocked.cause());
            case BathEvent.SuspectsNamed named -> loads.replaceAll(LoadTaken::asNamed);
        }
        return closed();
    }

    private void madeUp(BathEvent.MadeUp made) {
        fill = new Fill(made.fill(), made.origin().at());
        lastAnalysis = Optional.empty();
        lastGood = Optional.empty();
        strengthenedAt = Optional.empty();
        titaniumGramPerLitre = BigDecimal.ZERO;
    }

    /** Loads from the sample on stay: nothing is known about the bath that they met. */
    private void analysed(BathEvent.Analysed event) {
        Analysis analysis = new Analysis(event.sample(), event.takenAt(), event.method(), event.values(),
                event.signer().name());
        samples.add(event.sample());
        lastAnalysis = Optional.of(analysis);
        Optional.ofNullable(event.values().get(BathQuantity.DISSOLVED_TITANIUM)).ifPresent(measured -> {
            titaniumGramPerLitre = measured;
            loads.stream().filter(load -> load.fill() == event.fill() && !load.at().isBefore(event.takenAt()))
                    .forEach(load -> dissolve(load.areaSquareMetres()));
        });
        if (event.allInLimits()) {
            lastGood = Optional.of(analysis);
            loads.removeIf(load -> load.at().isBefore(event.takenAt()));
            strengthenedAt = strengthenedAt.filter(added -> added.isAfter(event.takenAt()));
        }
    }

    private void takenIn(BathEvent.TakenIn taken) {
        LoadTaken load = new LoadTaken(taken.basket(), taken.travellers(), taken.origin().at(), taken.fill(),
                taken.areaSquareMetres(), taken.joins(), false);
        loads.add(load);
        LoadTaken hangs = taken.joins() ? inside.stream()
                .filter(earlier -> earlier.basket().equals(taken.basket())).reduce(load, LoadTaken::with) : load;
        inside.removeIf(earlier -> !taken.stayed().contains(earlier.basket()));
        inside.add(hangs);
        dissolve(taken.areaSquareMetres());
    }

    private void dissolve(Optional<BigDecimal> areaSquareMetres) {
        areaSquareMetres.flatMap(area -> terms.removalGramPerSquareMetre().map(area::multiply))
                .ifPresent(gram -> titaniumGramPerLitre = titaniumGramPerLitre.add(
                        gram.divide(before.volumeLitres(), MathContext.DECIMAL64)));
    }

    private Bath closed() {
        return new Bath(before.station(), before.liquid(), before.volumeLitres(), before.basketsAtOnce(), terms, fill,
                lastAnalysis, lastGood, samples, loads, inside, locks, strengthenedAt, titaniumGramPerLitre);
    }
}
