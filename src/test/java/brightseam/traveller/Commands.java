package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import brightseam.traveller.TravellerCommand.*;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

/** Makes commands as the people of an invented shop would give them, at the moment that the shop has reached. */
final class Commands {

    static final Signer FABRICATOR = person("P-0001", "Nils Oker", Optional.empty(), Role.FABRICATOR);
    static final Signer SECOND = person("P-0002", "Tove Brant", Optional.empty(), Role.FABRICATOR);
    static final Signer LEAD = person("P-0003", "Ada Roem", Optional.empty(), Role.LEAD, Role.FABRICATOR);
    static final Signer INSPECTOR = person("P-0004", "Ida Quell", Optional.of("Q-03"), Role.INSPECTOR);
    static final Signer UNSTAMPED = person("P-0005", "Jon Vreede", Optional.empty(), Role.INSPECTOR);
    static final Signer ALL_ROUND = person("P-0006", "Eva Lund", Optional.of("Q-07"),
            Role.FABRICATOR, Role.LEAD, Role.INSPECTOR);

    private final Procedure procedure;
    private final Supplier<Moment> now;

    Commands(Procedure procedure, Supplier<Moment> now) {
        this.procedure = procedure;
        this.now = now;
    }

    private static Signer person(String badge, String name, Optional<String> stamp, Role... roles) {
        return new Signer(new BadgeId(badge), name, List.of(roles), stamp, "badge+pin");
    }

    Origin by(Signer who) {
        return new Origin(now.get(), who.badge(), "bench-1", false);
    }

    Release release(String traveller, int quantity, String grade, boolean onHold) {
        return new Release(by(LEAD), new TravellerId(traveller), new KitId("K-07"),
                new PartIdentity("LF-210", "Leg tube", "C"), quantity,
                new HeatFact(new HeatId("H-9T3381"), grade, onHold));
    }

    PutInBin put(String bin, BinClass binClass) {
        return new PutInBin(by(FABRICATOR), new BinFact(new BinId(bin), binClass, false));
    }

    PutInBin put(String bin, BinClass binClass, boolean closed, Signer who) {
        return new PutInBin(by(who), new BinFact(new BinId(bin), binClass, closed));
    }

    CloseBin close() {
        return new CloseBin(by(FABRICATOR));
    }

    OpenBin open() {
        return new OpenBin(by(FABRICATOR));
    }

    StartStep start(String step) {
        String stationClass = procedure.find(new StepId(step)).map(found -> found.station()).orElse("saw");
        return start(step, Optional.of(new StationFact(new StationId("S-1"), stationClass, false)), true, true);
    }

    StartStep start(String step, Optional<StationFact> station, boolean cautionsRead, boolean glovesOn) {
        return new StartStep(by(FABRICATOR), new StepId(step), station, cautionsRead, glovesOn, List.of(),
                scanned(step), List.of());
    }

    /** {@code step}, done {@code ago} by the clock on the wall. */
    EnterLate enterLate(String step, Duration ago, Signer who) {
        return enterLate(step, ago, "no network", who);
    }

    /** At a time that is likely right, to come, or long past. */
    EnterLate enterLate(String step, Random random, Signer who) {
        return enterLate(step, switch (random.nextInt(8)) {
            case 0 -> Duration.ofMinutes(-5);
            case 1 -> Duration.ofDays(400);
            default -> Duration.ofSeconds(random.nextInt(3));
        }, who);
    }

    EnterLate enterLate(String step, Duration ago, String reason, Signer who) {
        return new EnterLate(start(step), now.get().wall().minus(ago), reason, who);
    }

    StartStep startTouchedBy(Contact contact, String step) {
        List<Contact> touching = new ArrayList<>(scanned(step));
        touching.add(contact);
        return startTouching(touching, step);
    }

    StartStep startTouching(List<Contact> touching, String step) {
        StartStep plain = start(step);
        return new StartStep(plain.origin(), plain.step(), plain.station(), true, true, List.of(), touching, List.of());
    }

    /** Everything that {@code step} asks for by scan, as if it had been scanned. */
    List<Contact> scanned(String step) {
        return procedure.find(new StepId(step)).stream().flatMap(found -> found.uses().stream())
                .map(use -> contact(use.kind(), use.type())).toList();
    }

    static Contact contact(ContactKind kind, String type) {
        return new Contact(kind, type, "G-0031", "77/A");
    }

    ReportGlovesSpent glovesSpent(String what) {
        return new ReportGlovesSpent(by(FABRICATOR), what);
    }

    ChangeGloves changeGloves(String type) {
        return new ChangeGloves(by(FABRICATOR), contact(ContactKind.GLOVES, type), List.of());
    }

    CutHoldShort cutHoldShort(String step) {
        return new CutHoldShort(by(FABRICATOR), new StepId(step), "hoist alarm");
    }

    BeginHold beginHold(String step) {
        return new BeginHold(by(FABRICATOR), new StepId(step));
    }

    EndHold endHold(String step) {
        return new EndHold(by(FABRICATOR), new StepId(step));
    }

    TakeReading read(String step, String reading, String value) {
        return new TakeReading(by(FABRICATOR), new StepId(step), reading, new BigDecimal(value));
    }

    CorrectReading correct(String step, String reading, String value, Signer who) {
        return new CorrectReading(by(who), new StepId(step), reading, new BigDecimal(value), "mistyped", who);
    }

    SignStep sign(String step, Signer who) {
        return new SignStep(by(who), new StepId(step), who, List.of(), List.of());
    }

    StampStep stamp(String step, Signer who) {
        return new StampStep(by(who), new StepId(step), who, "", List.of());
    }

    RejectStep reject(String step, Signer who, Integer... pieces) {
        return new RejectStep(by(who), new StepId(step), who, Arrays.asList(pieces), "dented", List.of());
    }

    ReportTouch touch(String what) {
        return new ReportTouch(by(FABRICATOR), what);
    }

    ReportNonconformance report(Integer... pieces) {
        return new ReportNonconformance(by(FABRICATOR), Arrays.asList(pieces), "scratched");
    }

    MarkSuspect suspect(String step, Signer who) {
        return new MarkSuspect(by(who), Optional.of(new StepId(step)), "bath found bad", who);
    }

    Decide rework(int number, String step, Signer who) {
        return new Decide(by(who), number, Disposition.REWORK, Optional.of(new StepId(step)), "again", who);
    }

    Decide decide(int number, Disposition disposition, Signer who) {
        return new Decide(by(who), number, disposition, Optional.empty(), "looked at", who);
    }

    SetApart setApart(String child, Integer... pieces) {
        return new SetApart(by(FABRICATOR), new TravellerId(child), Arrays.asList(pieces), "one dent", FABRICATOR);
    }

    TakeOut takeOut(String child, BinClass into, Signer who, Integer... pieces) {
        return new TakeOut(by(who), new TravellerId(child), Arrays.asList(pieces), "a dent",
                new BinFact(new BinId("B-8"), into, false), who);
    }

    Watch watch() {
        return new Watch(new Origin(now.get(), Origin.SHOP, "server", false));
    }
}
