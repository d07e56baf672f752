package brightseam.traveller;

import brightseam.kernel.BadgeId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import brightseam.traveller.TravellerCommand.BeginArc;
import brightseam.traveller.TravellerCommand.EnterChamber;
import brightseam.traveller.TravellerCommand.JudgeJoint;
import brightseam.traveller.TravellerCommand.NoteJoint;
import brightseam.traveller.TravellerCommand.NoteLockPass;
import brightseam.traveller.TravellerCommand.SignWelding;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What a chamber session of an invented shop asks of the traveller T-1042, at the moment that the shop has reached. */
final class Inside {

    static final SessionId SESSION = new SessionId("CS-0012");
    static final StationId CHAMBER = new StationId("S-CHAMBER-1");
    static final StationId LOCK = new StationId("S-LOCK-1");
    static final String PROVEN = "ab".repeat(32);
    private static final Duration COOLING = Duration.ofSeconds(90);

    private Inside() {}

    static EnterChamber enter(Commands ask) {
        return enter(ask, Commands.FABRICATOR, ask.scanned("pass-in"));
    }

    static EnterChamber enter(Commands ask, Signer who, List<Contact> touching) {
        return new EnterChamber(ask.by(who), SESSION, LOCK, "lock pass 1", touching, who, List.of(), List.of());
    }

    static NoteLockPass lockPass(Commands ask) {
        return lockPass(ask, true);
    }

    static NoteLockPass lockPass(Commands ask, boolean inward) {
        Moment now = ask.by(Commands.FABRICATOR).at();
        return new NoteLockPass(ask.by(Commands.FABRICATOR), new LockPassFact(SESSION, LOCK, 1, inward,
                now.plus(Duration.ofMinutes(-9)), now, "3 cycles from 0.1 bar to 1 bar", Optional.of(ppm("22.0")),
                Optional.of(ppm("14.5")), List.of(new TravellerId("T-1042")), false));
    }

    static BeginArc arc(Commands ask, String joint, int run, Integer... pieces) {
        return new BeginArc(ask.by(Commands.FABRICATOR), new ArcFact(joint(joint), SESSION, CHAMBER, run,
                parts(pieces), "ERTi-2", Commands.FABRICATOR.badge(), "purged", contacts(), false));
    }

    /** The arc stopped now, 20 s after it began, and every second of it and of the cooling was watched. */
    static NoteJoint good(Commands ask, String joint, int run, Integer... pieces) {
        return note(ask, joint, run, "0.0", List.of(), List.of(), true, pieces);
    }

    /** What is known once the arc has stopped, before the joint has cooled. */
    static NoteJoint toTheEndOfTheArc(Commands ask, String joint, int run, Integer... pieces) {
        JointFact whole = good(ask, joint, run, pieces).joint();
        return new NoteJoint(ask.by(Commands.FABRICATOR), new JointFact(whole.joint(), whole.session(),
                whole.chamber(), whole.run(), whole.startedAt(), whole.stoppedAt(), whole.stoppedAt(), whole.parts(),
                whole.filler(), whole.welder(), whole.backSide(), whole.oxygenMeter(), whole.oxygenPpmLimit(),
                ppm("21.5"), ppm("16.0"), whole.secondsAbove(), List.of(), List.of(), true, PROVEN, contacts(),
                false));
    }

    /** Too much oxygen from the sixth second of the arc to the tenth. */
    static NoteJoint exceeded(Commands ask, String joint, int run, Integer... pieces) {
        return note(ask, joint, run, "4.0", List.of(span(ask, 6, 10, Optional.of(ppm("48.0")))), List.of(), true,
                pieces);
    }

    /** No usable reading from the tenth second of the arc to the thirteenth. */
    static NoteJoint unproven(Commands ask, String joint, int run, Integer... pieces) {
        return note(ask, joint, run, "0.0", List.of(), List.of(span(ask, 10, 13, Optional.empty())), false, pieces);
    }

    static NoteJoint note(Commands ask, String joint, int run, String secondsAbove, List<SpanFact> excursions,
            List<SpanFact> gaps, boolean proven, Integer... pieces) {
        Moment now = ask.by(Commands.FABRICATOR).at();
        return new NoteJoint(ask.by(Commands.FABRICATOR), new JointFact(joint(joint), SESSION, CHAMBER, run,
                began(ask), now, now.plus(COOLING), parts(pieces), "ERTi-2", Commands.FABRICATOR.badge(), "purged",
                new SupplyId("G-0701"), ppm("30.0"), ppm(excursions.isEmpty() ? "18.5" : "48.0"), ppm("12.1"),
                new BigDecimal(secondsAbove), excursions, gaps, proven, PROVEN, contacts(), false));
    }

    static JudgeJoint judged(Commands ask, String joint, int run, Signer who, boolean accepted, Integer... pieces) {
        return new JudgeJoint(ask.by(who), new JudgedFact(joint(joint), SESSION, run, parts(pieces),
                accepted ? "light straw" : "dark blue", accepted, accepted ? List.of() : List.of("undercut 0.2 mm"),
                "Workshop specification HDF-W-3, revision 2", "1100 lx at the joint",
                accepted ? "" : "Repair once, then ask the lead",
                List.of(new Photograph("J03 root", "cd".repeat(32)))), who);
    }

    static SignWelding sign(Commands ask, Signer who) {
        return new SignWelding(ask.by(who), who, List.of(), List.of());
    }

    static JointId joint(String number) {
        return new JointId(new KitId("K-07"), number);
    }

    static BigDecimal ppm(String value) {
        return new BigDecimal(value);
    }

    static List<Contact> contacts() {
        return List.of(new Contact(ContactKind.FILLER, "filler-wire", "F-0004", "W 5512"),
                new Contact(ContactKind.ARGON, "argon-cylinder", "A-0031", "AR 90-117"),
                new Contact(ContactKind.GAUGE, "oxygen-meter", "G-0701", "SN 4471"));
    }

    static BadgeId welder() {
        return Commands.FABRICATOR.badge();
    }

    private static Moment began(Commands ask) {
        return ask.by(Commands.FABRICATOR).at().plus(Duration.ofSeconds(-20));
    }

    private static SpanFact span(Commands ask, int from, int to, Optional<BigDecimal> highest) {
        return new SpanFact(began(ask).plus(Duration.ofSeconds(from)), began(ask).plus(Duration.ofSeconds(to)),
                highest);
    }

    private static List<Joined> parts(Integer... pieces) {
        return List.of(new Joined(new TravellerId("T-1042"), List.of(pieces)),
                new Joined(new TravellerId("T-1050"), List.of(1)));
    }
}
