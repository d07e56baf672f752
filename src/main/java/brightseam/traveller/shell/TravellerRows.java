package brightseam.traveller.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code traveller_row}: which travellers there are, for searches. */
final class TravellerRows implements Projection {

    private static final Set<Class<? extends TravellerEvent>> CHANGE_ROWS = Set.of(
            TravellerEvent.Released.class, TravellerEvent.SetApart.class, TravellerEvent.PiecesSetApart.class,
            TravellerEvent.PiecesScrapped.class, TravellerEvent.PassedIn.class, TravellerEvent.Closed.class,
            TravellerEvent.NonconformanceOpened.class, TravellerEvent.Dispositioned.class,
            TravellerEvent.ReturnedToStep.class);

    private final JdbcClient jdbc;

    TravellerRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("suspect_traveller", "traveller_row");
    }

    @Override
    public void apply(Entry entry) {
        if (!entry.stream().family().equals(TravellerStreams.KIND.family()) || !changesRow(entry)) {
            return;
        }
        String id = entry.stream().identity();
        TravellerEvent event = TravellerStreams.KIND.codec().read(entry);
        switch (event) {
            case TravellerEvent.Released first -> insert(Traveller.fold(List.of(first)).orElseThrow(), first);
            case TravellerEvent.SetApart first -> insert(Traveller.fold(List.of(first)).orElseThrow(), first);
            case TravellerEvent.PiecesSetApart parted -> lose(id, parted.pieces().size());
            case TravellerEvent.PiecesScrapped scrapped -> lose(id, scrapped.pieces().size());
            case TravellerEvent.PassedIn passed -> phase(id, Phase.PASSED_IN);
            case TravellerEvent.Closed closed -> phase(id, Phase.CLOSED);
            case TravellerEvent.NonconformanceOpened opened -> suspect(id, opened.cause(), opened.number());
            case TravellerEvent.Dispositioned decided -> jdbc.sql(
                    "delete from suspect_traveller where traveller_id = :id and nonconformance = :number")
                    .param("id", id).param("number", decided.number()).update();
            case TravellerEvent.ReturnedToStep returned -> jdbc.sql("""
                    update traveller_row set phase = 'PASSED_IN' where traveller_id = :id and phase = 'CLOSED'
                    """).param("id", id).update();
            default -> throw new IllegalStateException("changes no row: " + entry.type());
        }
    }

    /** Most events change no row; they are not even read, which is much of what a signature costs. */
    private static boolean changesRow(Entry entry) {
        return TravellerStreams.KIND.codec().classOf(entry.type()).filter(CHANGE_ROWS::contains).isPresent();
    }

    List<TravellerId> notEnded() {
        return ids(jdbc.sql("""
                select traveller_id from traveller_row
                where phase in ('ACTIVE', 'PASSED_IN')
                    or traveller_id in (select traveller_id from suspect_traveller) and phase = 'CLOSED'
                order by traveller_id
                """));
    }

    List<TravellerId> ofKit(KitId kit) {
        return ids(jdbc.sql("select traveller_id from traveller_row where kit_id = :kit order by traveller_id")
                .param("kit", kit.value()));
    }

    List<TravellerId> ended(int limit) {
        return ids(jdbc.sql("""
                select traveller_id from traveller_row
                where phase = 'SCRAPPED'
                    or phase = 'CLOSED' and traveller_id not in (select traveller_id from suspect_traveller)
                order by traveller_id desc
                fetch first :limit rows only
                """).param("limit", limit));
    }

    List<TravellerId> page(String after, Optional<KitId> kit, Optional<Boolean> ended, int limit) {
        String hasEnded = "(phase = 'SCRAPPED' or phase = 'CLOSED'"
                + " and traveller_id not in (select traveller_id from suspect_traveller))";
        JdbcClient.StatementSpec select = jdbc.sql("select traveller_id from traveller_row where traveller_id > :after"
                + kit.map(one -> " and kit_id = :kit").orElse("")
                + ended.map(yes -> yes ? " and " + hasEnded : " and not " + hasEnded).orElse("")
                + " order by traveller_id fetch first :limit rows only").param("after", after).param("limit", limit);
        return ids(kit.map(one -> select.param("kit", one.value())).orElse(select));
    }

    List<TravellerId> setApartFrom(TravellerId parent) {
        return ids(jdbc.sql("select traveller_id from traveller_row where parent_id = :id order by traveller_id")
                .param("id", parent.value()));
    }

    long lastReleaseNumber() {
        return jdbc.sql("select coalesce(max(release_number), 1000) from traveller_row")
                .query(Long.class).single();
    }

    private static List<TravellerId> ids(JdbcClient.StatementSpec select) {
        return select.query(String.class).list().stream().map(TravellerId::new).toList();
    }

    private void insert(Traveller traveller, TravellerEvent first) {
        jdbc.sql("""
                insert into traveller_row (traveller_id, release_number, parent_id, kit_id, part_number, heat_id,
                    procedure_id, pieces, phase, demo)
                values (:id, :number, :parent, :kit, :part, :heat, :procedure, :pieces, :phase, :demo)
                """)
                .param("id", traveller.id().value())
                .param("number", releaseNumber(traveller.id()).orElse(null))
                .param("parent", traveller.parent().map(TravellerId::value).orElse(null))
                .param("kit", traveller.kit().value())
                .param("part", traveller.part().partNumber())
                .param("heat", traveller.heat().value())
                .param("procedure", traveller.procedure().id())
                .param("pieces", traveller.pieces().size())
                .param("phase", traveller.phase().name())
                .param("demo", first.origin().demo())
                .update();
        traveller.openNonconformances().forEach(open -> suspect(traveller.id().value(), open.cause(), open.number()));
    }

    private static Optional<Long> releaseNumber(TravellerId id) {
        return id.value().matches("T-\\d{1,12}") ? Optional.of(Long.valueOf(id.value().substring(2)))
                : Optional.empty();
    }

    /** What can bring a closed traveller back has to be known after a restart. */
    private void suspect(String id, Nonconformance.Cause cause, int number) {
        if (cause == Nonconformance.Cause.SUSPECT || cause.isAboutAJoint()) {
            jdbc.sql("insert into suspect_traveller (traveller_id, nonconformance) values (:id, :number)")
                    .param("id", id).param("number", number).update();
        }
    }

    private void lose(String id, int pieces) {
        jdbc.sql("update traveller_row set pieces = pieces - :pieces where traveller_id = :id")
                .param("pieces", pieces).param("id", id).update();
        jdbc.sql("update traveller_row set phase = 'SCRAPPED' where traveller_id = :id and pieces = 0")
                .param("id", id).update();
    }

    private void phase(String id, Phase phase) {
        jdbc.sql("update traveller_row set phase = :phase where traveller_id = :id")
                .param("phase", phase.name()).param("id", id).update();
    }
}
