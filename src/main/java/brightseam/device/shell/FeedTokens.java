package brightseam.device.shell;

import brightseam.device.MeterCommand;
import brightseam.device.MeterRecord;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.Ledger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * The tokens by which devices are known that send readings over HTTP. A token is shown once, when it is made; only its
 * hash is kept, in a table of its own and not in the ledger. Two meters in one device share a token.
 */
@Service
public class FeedTokens {

    private static final int TOKEN_BYTES = 32;

    private final Meters meters;
    private final Attempts attempts;
    private final JdbcClient jdbc;
    private final SecureRandom random = new SecureRandom();

    /** Tokens of {@code meters}; hashes lie in the database of {@code jdbc}. */
    public FeedTokens(Ledger ledger, JdbcClient jdbc, Meters meters) {
        this.meters = meters;
        this.attempts = new Attempts(ledger);
        this.jdbc = jdbc;
    }

    /**
     * Makes one token for the device behind all meters of {@code commands}; older tokens of those meters end. The
     * answer is the token, 43 characters, which is nowhere kept.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<String> make(List<MeterCommand.MakeToken> commands) {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        Outcome<List<MeterRecord>> outcome = attempts.commit(
                () -> Prepared.all(commands.stream().map(meters::prepare).toList()));
        return switch (outcome) {
            case Outcome.Refused<List<MeterRecord>> refused -> new Outcome.Refused<>(refused.refusals());
            case Outcome.Done<List<MeterRecord>> done -> {
                commands.forEach(command -> keep(command.meter(), hash(token)));
                yield new Outcome.Done<>(token, done.entries());
            }
        };
    }

    /** The meters whose device has {@code token}; none where nobody has. */
    public Set<SupplyId> meters(String token) {
        return jdbc.sql("select meter_id from meter_token where token_hash = :hash")
                .param("hash", hash(token)).query(String.class).list().stream()
                .map(SupplyId::new).collect(Collectors.toUnmodifiableSet());
    }

    private void keep(SupplyId meter, String hash) {
        int known = jdbc.sql("update meter_token set token_hash = :hash where meter_id = :meter")
                .param("hash", hash).param("meter", meter.value()).update();
        if (known == 0) {
            jdbc.sql("insert into meter_token (meter_id, token_hash) values (:meter, :hash)")
                    .param("meter", meter.value()).param("hash", hash).update();
        }
    }

    private static String hash(String token) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
