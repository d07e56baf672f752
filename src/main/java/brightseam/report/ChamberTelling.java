package brightseam.report;

import brightseam.chart.ChartPoint;
import brightseam.kernel.JointId;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.report.JointTaken.Judged;
import brightseam.traveller.Contact;
import brightseam.traveller.Joined;
import brightseam.traveller.JointFact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent.ArcBegun;
import brightseam.traveller.TravellerEvent.EnteredChamber;
import brightseam.traveller.TravellerEvent.JointJudged;
import brightseam.traveller.TravellerEvent.JointWelded;
import brightseam.traveller.TravellerEvent.LockPassed;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Tells what happened in chamber sessions. */
final class ChamberTelling {

    private final Procedure procedure;
    private final Lookups lookups;
    private final Marks marks;
    private final List<ChamberPart.Entry> entries = new ArrayList<>();
    private final List<LockPassFact> locks = new ArrayList<>();
    private final Set<Contact> contacts = new LinkedHashSet<>();
    private final List<JointTaken> joints = new ArrayList<>();
    private final List<ChamberPart.Pending> pending = new ArrayList<>();

    ChamberTelling(Procedure procedure, Lookups lookups, Marks marks) {
        this.procedure = procedure;
        this.lookups = lookups;
        this.marks = marks;
    }

    void entered(EnteredChamber e) {
        entries.add(new ChamberPart.Entry(e.session(), e.station(), e.way(), e.at(), lookups.who(e.by())));
    }

    void passed(LockPassed e) {
        locks.add(e.lock());
    }

    void begun(ArcBegun e) {
        pending.add(new ChamberPart.Pending(e.arc(), e.at()));
        contacts.addAll(e.arc().contacts());
    }

    void welded(JointWelded e, Traveller lot) {
        JointFact fact = e.joint();
        pending.removeIf(arc -> arc.arc().joint().equals(fact.joint()) && arc.arc().run() == fact.run());
        contacts.addAll(fact.contacts());
        Optional<JointTaken> known = joints.stream().filter(joint -> isOf(joint, fact.joint(), fact.run())).findFirst();
        joints.removeAll(known.stream().toList());
        joints.add(new JointTaken(Stream.concat(known.stream().flatMap(joint -> joint.stretches().stream()),
                        Stream.of(fact)).toList(), e.pass(), known.map(JointTaken::lot).orElse(lot.id()),
                known.map(JointTaken::pieces).orElseGet(() -> Joined.pieces(lot, fact.parts())),
                lookups.who(fact.welder()), known.map(JointTaken::verdicts).orElse(List.of()), readings(fact)));
    }

    void judged(JointJudged e) {
        Mark mark = marks.of(e.signature(), e.origin(), "joint " + e.verdict().joint() + ", run " + e.verdict().run()
                + ", at step " + StepPage.label(procedure.step(e.step())), List.of(Role.INSPECTOR));
        joints.replaceAll(joint -> isOf(joint, e.verdict().joint(), e.verdict().run())
                ? with(joint, new Judged(e.verdict(), mark)) : joint);
    }

    /** A joint goes with its pieces. */
    void parted(List<Integer> pieces) {
        joints.removeIf(joint -> joint.pieces().stream().noneMatch(pieces::contains));
    }

    ChamberPart part() {
        return new ChamberPart(entries, locks, contacts.stream()
                .map(contact -> new Gear(contact, lookups.lastDay(contact.label()))).toList(), joints, pending);
    }

    private List<ChartPoint> readings(JointFact fact) {
        return lookups.readings().between(fact.oxygenMeter(), fact.startedAt().elapsedMillis(),
                fact.hotUntil().elapsedMillis());
    }

    private static boolean isOf(JointTaken taken, JointId joint, int run) {
        return taken.fact().joint().equals(joint) && taken.fact().run() == run;
    }

    private static JointTaken with(JointTaken joint, Judged more) {
        List<Judged> verdicts = new ArrayList<>(joint.verdicts());
        verdicts.add(more);
        return new JointTaken(joint.stretches(), joint.pass(), joint.lot(), joint.pieces(), joint.welder(), verdicts,
                joint.readings());
    }
}
