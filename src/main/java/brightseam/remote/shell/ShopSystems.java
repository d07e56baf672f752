package brightseam.remote.shell;

import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.SystemId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kernel.shell.TokenTries;
import brightseam.ledger.Chain;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import brightseam.people.Signer;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemCommand;
import brightseam.remote.SystemDecider;
import brightseam.remote.SystemEvent;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Bean;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The register of shop systems; knows each by its token. */
@Service
public class ShopSystems {

    private static final Logger LOG = LoggerFactory.getLogger(ShopSystems.class);
    private static final String BEARER = "Bearer ";
    private static final int TOKEN_BYTES = 32;
    private static final int TOKEN_LENGTH_MAX = 200;
    /** A use is written down once in this time, since a system may ask many times a second. */
    private static final Duration USE_WRITTEN = Duration.ofMinutes(1);

    private final EventStream<ShopSystem, SystemEvent> streams;
    private final SystemRows rows;
    private final JdbcClient jdbc;
    private final ShopClock clock;
    private final TokenTries tries;
    private final SecureRandom random = new SecureRandom();
    private final Map<SystemId, Moment> written = new ConcurrentHashMap<>();

    /** Systems in {@code ledger}, with their rows in the database of {@code jdbc}. */
    @Autowired
    public ShopSystems(Ledger ledger, JdbcClient jdbc, ShopClock clock) {
        this(ledger, jdbc, clock, () -> System.nanoTime() / 1_000_000);
    }

    ShopSystems(Ledger ledger, JdbcClient jdbc, ShopClock clock, LongSupplier realMillis) {
        this.streams = new EventStream<>(ledger, SystemStreams.KIND);
        this.rows = new SystemRows(jdbc);
        this.jdbc = jdbc;
        this.clock = clock;
        this.tries = new TokenTries(realMillis);
    }

    /** Keeps the rows of the systems; for the ledger. */
    @Bean
    public static Projection shopSystemProjection(JdbcClient jdbc) {
        return new StateProjection<>(SystemStreams.KIND, new SystemRows(jdbc));
    }

    /** Who asks. */
    public sealed interface Caller {

        /** A system with a token in use. */
        record Known(ShopSystem system) implements Caller {}

        /** No token that is known. */
        record Unknown() implements Caller {}

        /** Too many wrong tokens came from that place. */
        record TooOften(long waitSeconds) implements Caller {}
    }

    /** The system and the version of its stream, from the ledger. */
    public Optional<Versioned<ShopSystem>> find(SystemId system) {
        return streams.load(system);
    }

    /** Every system, those without a token too, sorted by name. */
    public List<ShopSystem> all() {
        return rows.all();
    }

    /**
     * Carries out {@code command}; a token is made by {@link #makeToken}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<ShopSystem> execute(SystemCommand command) {
        return streams.execute(command.system(), system -> SystemDecider.decide(system, command));
    }

    /**
     * Makes a token; the one before it ends. The answer is the token, 43 characters, which is nowhere kept.
     *
     * @param signer who signs for it
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<String> makeToken(SystemId system, Origin origin, Signer signer) {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        return switch (execute(new SystemCommand.MakeToken(system, hash(token), origin, signer))) {
            case Outcome.Done<ShopSystem> done -> new Outcome.Done<>(token, done.entries());
            case Outcome.Refused<ShopSystem> refused -> new Outcome.Refused<>(refused.refusals());
        };
    }

    /**
     * Who asks, by the header {@code Authorization}. Wrong tokens are counted by the place that they come from.
     *
     * @param place where the request comes from, such as an address
     */
    public Caller caller(String place, Optional<String> authorization) {
        long wait = tries.waitSeconds(place);
        if (wait > 0) {
            return new Caller.TooOften(wait);
        }
        Optional<ShopSystem> system = authorization
                .filter(header -> header.regionMatches(true, 0, BEARER, 0, BEARER.length()))
                .map(header -> header.substring(BEARER.length()).strip())
                .filter(token -> !token.isEmpty() && token.length() <= TOKEN_LENGTH_MAX)
                .flatMap(token -> rows.byToken(hash(token)));
        if (system.isEmpty()) {
            tries.count(place);
            return new Caller.Unknown();
        }
        used(system.get().id());
        return new Caller.Known(system.get());
    }

    /** When {@code system} last asked something, to a minute; empty where it never did. */
    public Optional<Instant> lastUsed(SystemId system) {
        return jdbc.sql("select last_used_at from shop_system_use where system_id = :system")
                .param("system", system.value()).query(String.class).optional().map(Instant::parse);
    }

    private void used(SystemId system) {
        Moment now = clock.now();
        Moment before = written.get(system);
        if (before != null && now.since(before).compareTo(USE_WRITTEN) < 0) {
            return;
        }
        written.put(system, now);
        try {
            int known = jdbc.sql("update shop_system_use set last_used_at = :at where system_id = :system")
                    .param("at", now.wall().toString()).param("system", system.value()).update();
            if (known == 0) {
                jdbc.sql("insert into shop_system_use (system_id, last_used_at) values (:system, :at)")
                        .param("at", now.wall().toString()).param("system", system.value()).update();
            }
        } catch (DataAccessException lost) {
            LOG.warn("when {} was last used could not be written down: {}", system, lost.getMessage());
        }
    }

    private static String hash(String token) {
        return Chain.sha256(token.getBytes(StandardCharsets.UTF_8));
    }
}
