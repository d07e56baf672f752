package brightseam.device.shell;

import brightseam.device.Feed;
import brightseam.device.MeterRecord;
import brightseam.device.Quality;
import brightseam.device.Reading;
import brightseam.kernel.Moment;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.ShopClock;
import brightseam.kernel.shell.TokenTries;
import brightseam.ledger.Versioned;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Service;

/**
 * Readings that devices send over HTTP. A device is known by its token alone. All readings of a message are taken or
 * none; one that is sent again under the same name of its batch is not taken twice.
 *
 * <p>A reading's time is the server's when the message came in, less the reading's age by the device's own clock. A
 * clock that is set wrong does no harm therefore; it is said of the readings all the same.
 */
@Service
public final class HttpFeed {

    /** The longest message. */
    public static final int BYTES_MAX = 1024 * 1024;

    private static final String BEARER = "Bearer ";
    private static final int BATCHES_REMEMBERED = 4096;

    private final FeedTokens tokens;
    private final Meters meters;
    private final Readings readings;
    private final ShopClock clock;
    private final TokenTries tries;
    private final Map<String, Integer> batches = Collections.synchronizedMap(new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Integer> eldest) {
            return size() > BATCHES_REMEMBERED;
        }
    });

    /** Takes what devices of {@code meters} send. */
    @Autowired
    public HttpFeed(FeedTokens tokens, Meters meters, Readings readings, ShopClock clock) {
        this(tokens, meters, readings, clock, () -> System.nanoTime() / 1_000_000);
    }

    HttpFeed(FeedTokens tokens, Meters meters, Readings readings, ShopClock clock, LongSupplier realMillis) {
        this.tokens = tokens;
        this.meters = meters;
        this.readings = readings;
        this.clock = clock;
        this.tries = new TokenTries(realMillis);
    }

    /**
     * Takes the readings of one message, or says why not.
     *
     * @param place where it comes from, to count wrong tokens by
     * @param authorization the header of that name; empty where there is none
     */
    public FeedAnswer receive(String place, Optional<String> authorization, byte[] body) {
        long wait = tries.waitSeconds(place);
        if (wait > 0) {
            return new FeedAnswer(429, "Too many wrong tokens",
                    List.of("Wait " + wait + " s, and look at the token of the device."), 0, wait);
        }
        Set<SupplyId> known = authorization.filter(header -> header.startsWith(BEARER))
                .map(header -> tokens.meters(header.substring(BEARER.length()).strip())).orElse(Set.of());
        if (known.isEmpty()) {
            tries.count(place);
            return FeedAnswer.refused(401, "No token that is known here",
                    List.of("Send the header Authorization: Bearer, with the token that was shown when it was made."));
        }
        try {
            return take(known, FeedMessage.read(body));
        } catch (FeedMessage.Malformed malformed) {
            return FeedAnswer.refused(400, "Not a message of readings", malformed.faults());
        }
    }

    private FeedAnswer take(Set<SupplyId> known, FeedMessage message) {
        Moment now = clock.now();
        Map<SupplyId, List<Reading>> all = new TreeMap<>();
        for (FeedMessage.Item item : message.items()) {
            Optional<SupplyId> meter = item.meter().or(() -> known.size() == 1 ? known.stream().findAny()
                    : Optional.empty());
            if (meter.isEmpty()) {
                return FeedAnswer.refused(400, "Which meter?",
                        List.of("This token is for several meters: every reading has to name its meter."));
            }
            if (!known.contains(meter.get())) {
                return FeedAnswer.refused(403, "Not a meter of this device",
                        List.of(meter.get() + " does not belong to this token."));
            }
            all.computeIfAbsent(meter.get(), any -> new ArrayList<>()).add(new Reading(
                    Math.max(0, now.elapsedMillis() - item.age().toMillis()), item.value()));
        }
        List<String> idle = all.keySet().stream().filter(meter -> !isSending(meter))
                .map(meter -> meter + " is out of use, or its readings come in otherwise now.").toList();
        return idle.isEmpty() ? takeOnce(Collections.min(known), message, all, now)
                : FeedAnswer.refused(409, "Meter not in use", idle);
    }

    private FeedAnswer takeOnce(SupplyId device, FeedMessage message, Map<SupplyId, List<Reading>> all, Moment now) {
        int count = message.items().size();
        Optional<String> batch = message.batch().map(name -> device + " " + name);
        Integer before = batch.map(name -> batches.putIfAbsent(name, count)).orElse(null);
        if (before != null) {
            return FeedAnswer.taken(before);
        }
        all.forEach((id, found) -> {
            Duration offMax = record(id).meter().health().clockOffMax();
            boolean off = message.sentAt().filter(sent -> isOff(sent, now, offMax)).isPresent();
            readings.take(id, found.stream().sorted(Comparator.comparingLong(Reading::elapsedMillis))
                    .map(reading -> off ? reading.with(Set.of(Quality.CLOCK_OFF)) : reading).toList());
        });
        return FeedAnswer.taken(count);
    }

    private boolean isSending(SupplyId meter) {
        MeterRecord record = record(meter);
        return record.isInUse() && record.meter().feed() instanceof Feed.Http;
    }

    private MeterRecord record(SupplyId meter) {
        return meters.find(meter).map(Versioned::state).orElseThrow();
    }

    private static boolean isOff(Instant sent, Moment now, Duration offMax) {
        return Duration.between(sent, now.wall()).abs().compareTo(offMax) > 0;
    }
}
