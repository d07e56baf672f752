package brightseam.traveller.shell;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.line.Bath;
import brightseam.line.BathCommand;
import brightseam.line.BathQuantity;
import brightseam.line.BathVerdict;
import brightseam.line.LoadTaken;
import brightseam.line.shell.Baths;
import brightseam.people.Signer;
import brightseam.people.shell.SignedWork;
import brightseam.traveller.Phase;
import brightseam.traveller.StepRun;
import brightseam.traveller.TravellerCommand;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/**
 * Judges baths. What an analysis or a person finds bad is stored together with the suspicion on every traveller that
 * went in since the last good sample, and on what was set apart from one since: all of it or nothing.
 *
 * <p>Every method throws {@link brightseam.ledger.NotStoredException} where the disk failed; nothing counts then.
 */
@Service
public class ProcessControl {

    private final Transactions transactions;
    private final Travellers travellers;
    private final Baths baths;
    private final Immersion immersion;
    private final Entitlement entitlement;

    ProcessControl(Transactions transactions, Travellers travellers, Baths baths, Immersion immersion,
            Entitlement entitlement) {
        this.entitlement = entitlement;
        this.transactions = transactions;
        this.travellers = travellers;
        this.baths = baths;
        this.immersion = immersion;
    }

    /**
     * An analysis as entered.
     *
     * @param sample the sample's number
     * @param method how it was analysed
     * @param age how long ago the sample was taken
     * @param values what was found, without the acid ratio
     * @param workings burette readings and what followed from them
     */
    public record Entered(String sample, String method, Duration age, SortedMap<BathQuantity, BigDecimal> values,
            List<String> workings) {}

    /** Enters an analysis of the bath of {@code station}. */
    public Outcome<BathVerdict> enterAnalysis(Actor actor, StationId station, Entered entered, Signer signer) {
        return judge(actor, signer, origin -> new BathCommand.EnterAnalysis(station, entered.sample(),
                entered.method(), origin.at().plus(entered.age().negated()), entered.values(), entered.workings(),
                origin, signer), "out of limits in sample " + entered.sample(),
                origin -> entitlement.objections(signer.badge(), SignedWork.BATH_ANALYSIS, origin));
    }

    /** Says that the bath of {@code station} was bad; no qualification keeps anybody from saying so. */
    public Outcome<BathVerdict> findBad(Actor actor, StationId station, String reason, Signer signer) {
        return judge(actor, signer, origin -> new BathCommand.FindBad(station, reason, origin, signer),
                "found bad: " + reason, origin -> List.of());
    }

    /** Travellers that would be suspect if the bath of {@code station} were found bad now. */
    public List<TravellerId> suspects(StationId station) {
        return baths.find(station).map(found -> found.state())
                .map(bath -> named(bath, bath.suspects())).orElse(List.of());
    }

    /** What hangs in the tank now, by the records of what went in. */
    public List<LoadTaken> inside(StationId station) {
        return baths.find(station).map(found -> found.state()).map(bath -> {
            Set<BinId> still = immersion.stillInside(bath);
            return bath.inside().stream().filter(load -> still.contains(load.basket())).toList();
        }).orElse(List.of());
    }

    private interface Asking {
        BathCommand at(Origin origin);
    }

    private Outcome<BathVerdict> judge(Actor actor, Signer signer, Asking asking, String finding,
            Function<Origin, List<Refusal>> objections) {
        return transactions.commit(origin -> {
            List<Refusal> against = objections.apply(origin);
            if (!against.isEmpty()) {
                return new Prepared.Refused<>(against);
            }
            Prepared<BathVerdict> judged = baths.prepare(asking.at(origin));
            if (!(judged instanceof Prepared.Ready<BathVerdict> ready)) {
                return judged;
            }
            BathVerdict verdict = ready.result();
            List<TravellerId> suspects = named(verdict.bath(), verdict.suspects());
            return judged.with(Prepared.all(suspects.stream().map(id ->
                    transactions.prepare(id, asked -> new TravellerCommand.MarkSuspect(origin,
                            run(asked.id(), verdict.bath()).map(StepRun::step),
                            "Bath of " + verdict.bath().station() + " " + finding, signer))).toList()),
                    (bath, marked) -> new BathVerdict(bath.bath(), suspects, bath.cause()));
        }, actor);
    }

    /** {@code direct} and what was set apart from them after the bath, without what was scrapped; sorted. */
    private List<TravellerId> named(Bath bath, List<TravellerId> direct) {
        Stream<TravellerId> parted = direct.stream().flatMap(this::descendants)
                .filter(child -> run(child, bath).isPresent());
        return Stream.concat(direct.stream(), parted).sorted().distinct()
                .filter(id -> travellers.find(id).filter(card -> card.traveller().phase() != Phase.SCRAPPED)
                        .isPresent()).toList();
    }

    private Stream<TravellerId> descendants(TravellerId id) {
        return travellers.rows().setApartFrom(id).stream()
                .flatMap(child -> Stream.concat(Stream.of(child), descendants(child)));
    }

    /** The last passage of {@code id} through the tank among those that are not proven good. */
    private Optional<StepRun> run(TravellerId id, Bath bath) {
        Optional<Moment> since = bath.loads().stream().map(LoadTaken::at).min(Comparator.naturalOrder());
        return travellers.find(id).map(Card::traveller).stream()
                .flatMap(traveller -> Stream.concat(
                        traveller.superseded().stream(), traveller.runs().values().stream()))
                .filter(run -> run.station().filter(bath.station()::equals).isPresent())
                .filter(run -> since.filter(first -> !run.startedAt().isBefore(first)).isPresent())
                .max(Comparator.comparing(StepRun::startedAt));
    }
}
