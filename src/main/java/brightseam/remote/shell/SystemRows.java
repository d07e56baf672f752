package brightseam.remote.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.SystemId;
import brightseam.ledger.shell.StateRows;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table {@code shop_system_row}. */
final class SystemRows implements StateRows<ShopSystem> {

    private static final String SELECT = """
            select system_id, title, scopes, answering_badge, answering_name, tokens_made, token_sha256, made_at,
                made_millis, made_by, withdrawn_reason, withdrawn_at, withdrawn_millis, withdrawn_by
            from shop_system_row
            """;

    private static final String INSERT = """
            insert into shop_system_row (system_id, title, scopes, answering_badge, answering_name, tokens_made,
                token_sha256, made_at, made_millis, made_by, withdrawn_reason, withdrawn_at, withdrawn_millis,
                withdrawn_by)
            values (:system, :title, :scopes, :answering, :name, :tokens, :sha256, :made, :madeMillis, :madeBy,
                :reason, :withdrawn, :withdrawnMillis, :withdrawnBy)
            """;

    private static final String UPDATE = """
            update shop_system_row
            set title = :title, scopes = :scopes, answering_badge = :answering, answering_name = :name,
                tokens_made = :tokens, token_sha256 = :sha256, made_at = :made, made_millis = :madeMillis,
                made_by = :madeBy, withdrawn_reason = :reason, withdrawn_at = :withdrawn,
                withdrawn_millis = :withdrawnMillis, withdrawn_by = :withdrawnBy
            where system_id = :system
            """;

    private final JdbcClient jdbc;

    SystemRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> tables() {
        return List.of("shop_system_row");
    }

    @Override
    public Optional<ShopSystem> find(String identity) {
        return jdbc.sql(SELECT + "where system_id = :system").param("system", identity)
                .query(SystemRows::system).optional();
    }

    Optional<ShopSystem> byToken(String sha256) {
        return jdbc.sql(SELECT + "where token_sha256 = :sha256").param("sha256", sha256)
                .query(SystemRows::system).optional();
    }

    List<ShopSystem> all() {
        return jdbc.sql(SELECT + "order by system_id").query(SystemRows::system).list();
    }

    @Override
    public void put(Optional<ShopSystem> before, ShopSystem after, long position) {
        jdbc.sql(before.isPresent() ? UPDATE : INSERT)
                .param("system", after.id().value())
                .param("title", after.title())
                .param("scopes", after.scopes().stream().map(Scope::name).collect(Collectors.joining(" ")))
                .param("answering", after.answering().map(who -> who.badge().value()).orElse(null))
                .param("name", after.answering().map(ShopSystem.Answering::name).orElse(null))
                .param("tokens", after.tokensMade())
                .param("sha256", after.token().map(ShopSystem.Token::sha256).orElse(null))
                .param("made", after.token().map(token -> token.madeAt().wall().toString()).orElse(null))
                .param("madeMillis", after.token().map(token -> token.madeAt().elapsedMillis()).orElse(null))
                .param("madeBy", after.token().map(token -> token.madeBy().value()).orElse(null))
                .param("reason", after.withdrawn().map(ShopSystem.Withdrawn::reason).orElse(null))
                .param("withdrawn", after.withdrawn().map(end -> end.at().wall().toString()).orElse(null))
                .param("withdrawnMillis", after.withdrawn().map(end -> end.at().elapsedMillis()).orElse(null))
                .param("withdrawnBy", after.withdrawn().map(end -> end.by().value()).orElse(null))
                .update();
    }

    private static ShopSystem system(ResultSet row, int number) throws SQLException {
        Optional<ShopSystem.Answering> answering = row.getString("answering_badge") == null ? Optional.empty()
                : Optional.of(new ShopSystem.Answering(
                        new BadgeId(row.getString("answering_badge")), row.getString("answering_name")));
        Optional<ShopSystem.Token> token = row.getString("token_sha256") == null ? Optional.empty()
                : Optional.of(new ShopSystem.Token(row.getString("token_sha256"),
                        moment(row, "made"), new BadgeId(row.getString("made_by"))));
        Optional<ShopSystem.Withdrawn> withdrawn = row.getString("withdrawn_reason") == null ? Optional.empty()
                : Optional.of(new ShopSystem.Withdrawn(row.getString("withdrawn_reason"),
                        moment(row, "withdrawn"), new BadgeId(row.getString("withdrawn_by"))));
        return new ShopSystem(new SystemId(row.getString("system_id")), row.getString("title"),
                Arrays.stream(row.getString("scopes").split(" ")).map(Scope::valueOf).toList(), answering, token,
                row.getInt("tokens_made"), withdrawn);
    }

    private static Moment moment(ResultSet row, String what) throws SQLException {
        return new Moment(Instant.parse(row.getString(what + "_at")), row.getLong(what + "_millis"));
    }
}
