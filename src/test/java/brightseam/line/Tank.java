package brightseam.line;

import static brightseam.kernel.Samples.origin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.Limits;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** An acid tank whose clock the tests turn: what happened to it, and what it answers next. */
final class Tank {

    static final StationId ID = new StationId("S-PICKLE-1");
    static final Signer CHEMIST = signer("P-0401", Role.PROCESS_CONTROL);
    static final Signer LEAD = signer("P-0201", Role.LEAD);
    static final Signer FABRICATOR = signer("P-0101", Role.FABRICATOR);
    static final BathTerms TERMS = new BathTerms(new TreeMap<>(Map.of(
            BathQuantity.NITRIC_ACID, between("20", "30"),
            BathQuantity.HYDROFLUORIC_ACID, between("1", "2"),
            BathQuantity.ACID_RATIO, new Limits(Optional.of(new BigDecimal("10")), Optional.empty()),
            BathQuantity.DISSOLVED_TITANIUM, new Limits(Optional.empty(), Optional.of(new BigDecimal("15"))))),
            new AnalysisDue(Optional.of(Duration.ofDays(7)), Optional.of(3), Optional.of(new BigDecimal("12"))),
            Optional.of(new BigDecimal("50")));

    private Optional<Bath> bath = Optional.empty();
    private long now;

    static Tank registered() {
        return new Tank().does(tank -> tank.register(CHEMIST));
    }

    static Tank analysed() {
        return registered().later(60).does(tank -> tank.analysis("A-1", "25", "1.8", "2"));
    }

    interface Ask {
        BathCommand of(Tank tank);
    }

    Tank later(long seconds) {
        now += seconds;
        return this;
    }

    Bath bath() {
        return bath.orElseThrow();
    }

    Moment now() {
        return at().at();
    }

    Origin at() {
        return origin(now);
    }

    Decision<BathEvent> decide(Ask ask) {
        return BathDecider.decide(bath, ask.of(this));
    }

    Tank does(Ask ask) {
        events(ask).forEach(event -> bath = Optional.of(Bath.evolve(bath, event)));
        return this;
    }

    List<BathEvent> events(Ask ask) {
        return switch (decide(ask)) {
            case Decision.Accepted<BathEvent> accepted -> accepted.events();
            case Decision.Refused<BathEvent> refused -> throw new AssertionError(refused.refusals());
        };
    }

    List<String> refusals(Ask ask) {
        return switch (decide(ask)) {
            case Decision.Accepted<BathEvent> accepted -> List.of();
            case Decision.Refused<BathEvent> refused -> refused.refusals().stream().map(r -> r.code()).toList();
        };
    }

    List<String> objections() {
        return bath().objections(now()).stream().map(BathRefusal::code).toList();
    }

    BathCommand register(Signer signer) {
        return new BathCommand.RegisterBath(
                ID, Liquid.PICKLING_ACID, new BigDecimal("400"), 2, TERMS, at(), signer);
    }

    BathCommand analysis(String sample, String nitric, String hydrofluoric, String titanium) {
        return analysis(sample, now(), values(nitric, hydrofluoric, titanium), CHEMIST);
    }

    BathCommand analysis(
            String sample, Moment takenAt, SortedMap<BathQuantity, BigDecimal> values, Signer signer) {
        return new BathCommand.EnterAnalysis(ID, sample, "titration", takenAt, values, List.of(), at(), signer);
    }

    static SortedMap<BathQuantity, BigDecimal> values(String nitric, String hydrofluoric, String titanium) {
        return new TreeMap<>(Map.of(
                BathQuantity.NITRIC_ACID, new BigDecimal(nitric),
                BathQuantity.HYDROFLUORIC_ACID, new BigDecimal(hydrofluoric),
                BathQuantity.DISSOLVED_TITANIUM, new BigDecimal(titanium)));
    }

    BathCommand load(String basket, String traveller, String... stillInside) {
        return load(basket, traveller, Optional.empty(), false, stillInside);
    }

    BathCommand load(String basket, String traveller, Optional<BigDecimal> area, boolean cannotWait,
            String... stillInside) {
        Set<BinId> inside = new TreeSet<>(Arrays.stream(stillInside).map(BinId::new).toList());
        return new BathCommand.TakeIn(ID, new BinId(basket), new TreeSet<>(Set.of(new TravellerId(traveller))), area,
                inside, cannotWait, at());
    }

    BathCommand addition(Addend addend) {
        return new BathCommand.RecordAddition(
                ID, new Addition(addend, new BigDecimal("4.2"), "back to 25 %", List.of()), at(), CHEMIST);
    }

    BathCommand findBad(Signer signer) {
        return new BathCommand.FindBad(ID, "smut on the coupon", at(), signer);
    }

    BathCommand lock(Signer signer) {
        return new BathCommand.LockBath(ID, "extraction fan stopped", at(), signer);
    }

    BathCommand unlock(BathLock.Cause cause, Signer signer) {
        return new BathCommand.UnlockBath(ID, cause, "in order again", at(), signer);
    }

    BathCommand makeUp() {
        return new BathCommand.MakeUp(ID, "72 L nitric, 6 L hydrofluoric, water to 400 L", List.of(), at(), CHEMIST);
    }

    static List<TravellerId> travellers(String... ids) {
        return Arrays.stream(ids).map(TravellerId::new).toList();
    }

    private static Limits between(String low, String high) {
        return new Limits(Optional.of(new BigDecimal(low)), Optional.of(new BigDecimal(high)));
    }

    private static Signer signer(String badge, Role role) {
        return new Signer(new BadgeId(badge), "Somebody", List.of(role), Optional.empty(), "badge+pin");
    }
}
