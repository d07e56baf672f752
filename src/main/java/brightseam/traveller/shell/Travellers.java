package brightseam.traveller.shell;

import brightseam.kernel.BinId;
import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.bins.shell.Bins;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.Procedure;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Reads travellers: single ones from the ledger, lists by rows that follow it. */
@Service
public class Travellers {

    private final Ledger ledger;
    private final EventStream<Traveller, TravellerEvent> streams;
    private final TravellerRows rows;
    private final ProcedureLibrary procedures;
    private final Bins bins;

    /** Travellers in {@code ledger}, on the procedures of {@code procedures}. */
    public Travellers(Ledger ledger, JdbcClient jdbc, ProcedureLibrary procedures, Bins bins) {
        this.ledger = ledger;
        this.streams = new EventStream<>(ledger, TravellerStreams.KIND);
        this.rows = new TravellerRows(jdbc);
        this.procedures = procedures;
        this.bins = bins;
    }

    /** Keeps the rows of the travellers; for the ledger. */
    @Bean
    static Projection travellerProjection(JdbcClient jdbc) {
        return new TravellerRows(jdbc);
    }

    /** The traveller as it stands; empty where there is none under that label. */
    public Optional<Card> find(TravellerId id) {
        return streams.load(id).map(this::card);
    }

    /** Every traveller that has not ended, sorted by label. */
    public List<Card> notEnded() {
        return cards(rows.notEnded());
    }

    /** The latest travellers that have ended, latest first. */
    public List<Card> ended(int limit) {
        return cards(rows.ended(limit));
    }

    /**
     * A page of all travellers there ever were, sorted by label.
     *
     * @param after the last label of the page before; empty text for the first page
     * @param kit of this kit alone, where one is named
     * @param ended those alone that have ended, or that have not, where one of both is asked for
     */
    public List<Card> page(String after, Optional<KitId> kit, Optional<Boolean> ended, int limit) {
        return cards(rows.page(after, kit, ended, limit));
    }

    /** Every traveller of a kit, ended ones too, sorted by label. */
    public List<Card> ofKit(KitId kit) {
        return cards(rows.ofKit(kit));
    }

    /** The labels of every traveller of a kit, ended ones too, sorted. */
    public List<TravellerId> labelsOfKit(KitId kit) {
        return rows.ofKit(kit);
    }

    /** What lies in {@code bin}, sorted by label. */
    public List<Card> inBin(BinId bin) {
        return cards(List.copyOf(bins.inside(bin)));
    }

    /** The whole record of a traveller in order, from the ledger. */
    public List<RecordedEvent> record(TravellerId id) {
        return ledger.read(TravellerStreams.KIND.stream(id)).stream()
                .map(entry -> new RecordedEvent(entry, TravellerStreams.KIND.codec().read(entry)))
                .toList();
    }

    EventStream<Traveller, TravellerEvent> streams() {
        return streams;
    }

    TravellerRows rows() {
        return rows;
    }

    private List<Card> cards(List<TravellerId> ids) {
        return ids.stream().map(this::find).flatMap(Optional::stream).toList();
    }

    /** The revision that {@code traveller} follows. */
    Procedure procedure(Traveller traveller) {
        return procedures.find(traveller.procedure()).orElseThrow(() ->
                new IllegalStateException("the ledger lacks " + traveller.procedure().label()));
    }

    private Card card(Versioned<Traveller> loaded) {
        return new Card(loaded.state(), procedure(loaded.state()), loaded.version());
    }
}
