package brightseam.ui.board;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.CleanWindow;
import brightseam.procedure.Gap;
import brightseam.procedure.Hold;
import brightseam.procedure.Mix;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.StepKind;
import brightseam.procedure.WindowLimits;
import brightseam.traveller.Handling;
import brightseam.traveller.Meaning;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Phase;
import brightseam.traveller.Placement;
import brightseam.traveller.Signature;
import brightseam.traveller.StepRun;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Makes travellers in any state on a short made-up procedure: pickle, rinse, dry, wipe, cloth check, pass in. */
final class Lot {

    static final Moment NOW = new Moment(Instant.parse("2031-03-04T12:00:00Z"), 100_000_000);
    private static final Signer NOBODY_REAL =
            new Signer(new BadgeId("P-0107"), "Nils Oker", List.of(Role.FABRICATOR), Optional.empty(), "badge+pin");

    private final String id;
    private final String kit;
    private final Map<StepId, StepRun> runs = new LinkedHashMap<>();
    private int pieces = 2;
    private Optional<Placement> placement = Optional.empty();
    private Window window = new Window.NotOpen();
    private List<Nonconformance> nonconformances = List.of();
    private Phase phase = Phase.ACTIVE;

    private Lot(String id, String kit) {
        this.id = id;
        this.kit = kit;
    }

    static Lot of(String id, String kit) {
        return new Lot(id, kit);
    }

    Lot pieces(int count) {
        pieces = count;
        return this;
    }

    Lot signed(String... steps) {
        for (String step : steps) {
            runs.put(new StepId(step), run(step, Optional.of(ago(60)), Optional.of(ago(30)), Optional.of(ago(29))));
        }
        return this;
    }

    /** The hold of {@code step} began so long ago. */
    Lot holding(String step, long sinceSeconds) {
        runs.put(new StepId(step), run(step, Optional.of(ago(sinceSeconds)), Optional.empty(), Optional.empty()));
        return this;
    }

    /** The hold of {@code step} ended so long ago; it is not signed. */
    Lot held(String step, long sinceSeconds) {
        runs.put(new StepId(step), run(step, Optional.of(ago(sinceSeconds + 200)), Optional.of(ago(sinceSeconds)),
                Optional.empty()));
        return this;
    }

    Lot cleanedMinutesAgo(long minutes) {
        signed("pickle", "rinse", "dry", "wipe");
        window = Window.Open.at(ago(minutes * 60), limits(), Handling.CLOSED_CLEAN_BIN);
        placement = Optional.of(new Placement(new BinId("B-0201"), BinClass.CLEAN_BIN, true));
        return this;
    }

    Lot window(Window other) {
        window = other;
        return this;
    }

    Lot in(String bin, BinClass binClass, boolean closed) {
        placement = Optional.of(new Placement(new BinId(bin), binClass, closed));
        return this;
    }

    Lot stopped(Nonconformance.Cause cause, String step) {
        nonconformances = List.of(new Nonconformance(1, cause, new StepId(step), 1,
                IntStream.rangeClosed(1, pieces).boxed().toList(), "as found", NOW, Optional.empty()));
        return this;
    }

    Lot phase(Phase other) {
        phase = other;
        return this;
    }

    Card card() {
        Procedure procedure = procedure();
        return new Card(new Traveller(new TravellerId(id), Optional.empty(), new KitId(kit),
                new PartIdentity("LF-100-01", "Frame leg", "B"), IntStream.rangeClosed(1, pieces).boxed().toList(),
                new HeatId("H-1"), procedure.ref(), procedure.route(), NOW, Map.copyOf(runs), List.of(), placement,
                window, nonconformances, phase, Optional.empty(), Optional.empty(), List.of(), false), procedure,
                1);
    }

    private static Moment ago(long seconds) {
        return new Moment(NOW.wall().minusSeconds(seconds), NOW.elapsedMillis() - seconds * 1000);
    }

    private static StepRun run(String step, Optional<Moment> begun, Optional<Moment> ended, Optional<Moment> signed) {
        return new StepRun(new StepId(step), 1, ago(300), NOBODY_REAL.badge(), Optional.empty(), List.of(), begun,
                ended, List.of(), signed, signed.map(at -> new Signature(NOBODY_REAL, Meaning.PERFORMED)),
                Optional.empty());
    }

    private static WindowLimits limits() {
        return new WindowLimits(Duration.ofHours(4), Duration.ofHours(24), Duration.ofHours(168));
    }

    private static Procedure procedure() {
        Hold pickle = new Hold(Duration.ofMinutes(2), Optional.of(Duration.ofMinutes(5)));
        Gap rinse = new Gap(Duration.ofSeconds(60), "acid dries on");
        return new Procedure(new ProcedureRef("TUBE", "A", "5e".repeat(32)), "Titanium tube", "tests only",
                List.of("9"), List.of(
                        step(10, "pickle", "Acid pickle", StepKind.SOAK, Optional.of(pickle), Optional.of(rinse)),
                        step(20, "rinse", "Rinse", StepKind.RINSE, Optional.empty(), Optional.empty()),
                        step(30, "dry", "Dry", StepKind.DRY, Optional.empty(), Optional.empty()),
                        step(40, "wipe", "Solvent wipe", StepKind.WIPE, Optional.empty(), Optional.empty()),
                        step(50, "cloth", "White-cloth check", StepKind.INSPECTION, Optional.empty(), Optional.empty()),
                        step(60, "pass-in", "Pass in", StepKind.PASS_IN, Optional.empty(), Optional.empty())),
                new CleanWindow(new StepId("wipe"), new StepId("pass-in"), limits(), Duration.ofMinutes(30),
                        new StepId("wipe")), new StepId("wipe"), List.of());
    }

    private static Step step(int number, String id, String title, StepKind kind, Optional<Hold> hold,
            Optional<Gap> gap) {
        return new Step(new StepId(id), number, title, kind, id + "-place", "Do it.", List.of(),
                Set.of(BinClass.PROCESS_BASKET, BinClass.CLEAN_BIN), Optional.empty(), List.of(), List.of(), hold, gap,
                List.of(),
                kind == StepKind.INSPECTION ? SignedBy.INSPECTOR : SignedBy.FABRICATOR, List.of(), List.of(), Mix.ANY,
                false);
    }
}
