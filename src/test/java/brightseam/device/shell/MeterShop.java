package brightseam.device.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.device.Feed;
import brightseam.device.Meter;
import brightseam.device.MeterCommand;
import brightseam.device.MeterTerms;
import brightseam.device.SampleMeters;
import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.kernel.shell.TestClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.line.StationCommand;
import brightseam.line.shell.Stations;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.SupplyCommand;
import brightseam.supply.shell.Supplies;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The registers that meters need, on a ledger and a database of a test. */
public final class MeterShop {

    /** The last day of every calibration. */
    public static final LocalDate LAST_DAY = LocalDate.of(2031, 9, 1);
    /** The projections that the ledger keeps. */
    public static final List<Function<JdbcClient, Projection>> PROJECTIONS =
            List.of(Supplies::supplyProjection, Stations::stationProjection, Meters::meterProjection);

    private static final SupplyType TYPE = new SupplyType(
            "oxygen-meter", "Oxygen meter", ContactKind.GAUGE, Set.of(Surface.UNCLEANED));

    private final TestClock clock = new TestClock();
    private final Supplies supplies;
    private final Meters meters;
    private final FeedTokens tokens;

    /** Registers in {@code ledger}, which keeps {@link #PROJECTIONS} in the database of {@code jdbc}. */
    public MeterShop(Ledger ledger, JdbcClient jdbc) {
        Stations stations = new Stations(ledger, jdbc);
        this.supplies = new Supplies(ledger, jdbc);
        this.meters = new Meters(ledger, jdbc, supplies, stations);
        this.tokens = new FeedTokens(ledger, jdbc, meters);
        if (stations.find(SampleMeters.CHAMBER).isEmpty()) {
            done(stations.execute(new StationCommand.RegisterStation(
                    SampleMeters.CHAMBER, "chamber", "Chamber", false, ORIGIN)));
        }
    }

    /** The clock. */
    public TestClock clock() {
        return clock;
    }

    /** The register of supplies. */
    public Supplies supplies() {
        return supplies;
    }

    /** The register of meters. */
    public Meters meters() {
        return meters;
    }

    /** The tokens of devices. */
    public FeedTokens tokens() {
        return tokens;
    }

    /** Brings the gauge {@code id} into the shop. */
    public void gauge(SupplyId id) {
        done(supplies.execute(new SupplyCommand.RegisterSupply(id, TYPE, "Oxygen, fast", "SN-" + id, "Fennmark",
                Optional.of(LAST_DAY), Set.of(Surface.UNCLEANED), ORIGIN)));
    }

    /** Registers the usual oxygen meter with {@code feed}, and the gauge behind it. */
    public Meter oxygen(Feed feed) {
        return register(SampleMeters.oxygen(feed));
    }

    /** Registers {@code meter} and the gauge behind it. */
    public Meter register(Meter meter) {
        gauge(meter.id());
        done(meters.execute(new MeterCommand.RegisterMeter(
                meter.id(), MeterTerms.of(meter), ORIGIN, SampleMeters.LEAD)));
        return meter;
    }

    /** A new token for the devices of {@code ids}. */
    public String token(SupplyId... ids) {
        return done(tokens.make(List.of(ids).stream()
                .map(id -> new MeterCommand.MakeToken(id, ORIGIN, SampleMeters.LEAD)).toList()));
    }

    static <R> R done(Outcome<R> outcome) {
        assertInstanceOf(Outcome.Done.class, outcome, outcome::toString);
        return ((Outcome.Done<R>) outcome).result();
    }
}
