package brightseam.line.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.line.Addend;
import brightseam.line.Addition;
import brightseam.line.BathDeed;
import brightseam.line.BathDeed.What;
import brightseam.line.BathEvent;
import brightseam.line.BathLock;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What was done to baths: {@code bath_deed_row}. */
final class BathDeedRows implements Projection {

    private final JdbcClient jdbc;

    BathDeedRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("bath_deed_row");
    }

    @Override
    public void apply(Entry entry) {
        if (BathStreams.isMine(entry)) {
            BathEvent event = BathStreams.KIND.codec().read(entry);
            deed(event, fill(event)).ifPresent(deed -> insert(event.station(), deed, entry.position()));
        }
    }

    /** The last {@code limit} deeds, latest first. */
    List<BathDeed> deeds(StationId station, int limit) {
        return jdbc.sql("""
                        select fill_number, done_at, what, addend, litres, cause, reason, workings, signed_by
                        from bath_deed_row
                        where station_id = :station
                        order by position desc
                        fetch first :limit rows only
                        """)
                .param("station", station.value()).param("limit", limit)
                .query((row, number) -> deed(row)).list();
    }

    private int fill(BathEvent event) {
        return switch (event) {
            case BathEvent.Registered first -> 1;
            case BathEvent.MadeUp made -> made.fill();
            case BathEvent.Added added -> added.fill();
            case BathEvent.Analysed analysed -> analysed.fill();
            case BathEvent.TakenIn taken -> taken.fill();
            case BathEvent.TermsChanged e -> currentFill(e.station());
            case BathEvent.Locked e -> currentFill(e.station());
            case BathEvent.Unlocked e -> currentFill(e.station());
            case BathEvent.SuspectsNamed e -> currentFill(e.station());
        };
    }

    private int currentFill(StationId station) {
        return jdbc.sql("select coalesce(max(fill_number), 1) from bath_deed_row where station_id = :station")
                .param("station", station.value()).query(Integer.class).single();
    }

    private static Optional<BathDeed> deed(BathEvent event, int fill) {
        return switch (event) {
            case BathEvent.Registered e -> Optional.of(plain(e.origin(), fill, What.REGISTERED, Optional.empty(),
                    List.of(), e.signer()));
            case BathEvent.TermsChanged e -> Optional.of(plain(e.origin(), fill, What.TERMS_CHANGED,
                    Optional.of(e.reason()), List.of(), e.signer()));
            case BathEvent.MadeUp e -> Optional.of(plain(e.origin(), fill, What.MADE_UP, Optional.of(e.what()),
                    e.workings(), e.signer()));
            case BathEvent.Added e -> Optional.of(added(e.origin(), fill, e.addition(), e.signer()));
            case BathEvent.Locked e -> Optional.of(lock(e.origin(), fill, What.LOCKED, e.cause(), e.reason(),
                    e.signer()));
            case BathEvent.Unlocked e -> Optional.of(lock(e.origin(), fill, What.UNLOCKED, e.cause(), e.reason(),
                    e.signer()));
            case BathEvent.Analysed e -> Optional.empty();
            case BathEvent.TakenIn e -> Optional.empty();
            case BathEvent.SuspectsNamed e -> Optional.empty();
        };
    }

    private static BathDeed plain(Origin origin, int fill, What what, Optional<String> reason, List<String> workings,
            Signer signer) {
        return new BathDeed(origin.at().wall(), fill, what, Optional.empty(), Optional.empty(), Optional.empty(),
                reason, workings, signer.name());
    }

    private static BathDeed added(Origin origin, int fill, Addition addition, Signer signer) {
        return new BathDeed(origin.at().wall(), fill, What.ADDED, Optional.of(addition.addend()),
                Optional.of(addition.litres()), Optional.empty(), Optional.of(addition.reason()),
                addition.workings(), signer.name());
    }

    private static BathDeed lock(Origin origin, int fill, What what, BathLock.Cause cause, Optional<String> reason,
            Optional<Signer> signer) {
        return new BathDeed(origin.at().wall(), fill, what, Optional.empty(), Optional.empty(), Optional.of(cause),
                reason, List.of(), signer.map(Signer::name).orElse(""));
    }

    private void insert(StationId station, BathDeed deed, long position) {
        jdbc.sql("""
                        insert into bath_deed_row (position, station_id, fill_number, done_at, what, addend, litres,
                            cause, reason, workings, signed_by)
                        values (:position, :station, :fill, :at, :what, :addend, :litres, :cause, :reason, :workings,
                            :by)
                        """)
                .param("position", position)
                .param("station", station.value())
                .param("fill", deed.fill())
                .param("at", deed.at().toString())
                .param("what", deed.what().name())
                .param("addend", deed.addend().map(Enum::name).orElse(null))
                .param("litres", deed.litres().map(BigDecimal::toPlainString).orElse(null))
                .param("cause", deed.cause().map(Enum::name).orElse(null))
                .param("reason", deed.reason().orElse(null))
                .param("workings", String.join("\n", deed.workings()))
                .param("by", deed.by())
                .update();
    }

    private static BathDeed deed(ResultSet row) throws SQLException {
        return new BathDeed(
                Instant.parse(row.getString("done_at")),
                row.getInt("fill_number"),
                What.valueOf(row.getString("what")),
                Optional.ofNullable(row.getString("addend")).map(Addend::valueOf),
                Optional.ofNullable(row.getString("litres")).map(BigDecimal::new),
                Optional.ofNullable(row.getString("cause")).map(BathLock.Cause::valueOf),
                Optional.ofNullable(row.getString("reason")),
                BathRows.lines(row.getString("workings")),
                row.getString("signed_by"));
    }
}
