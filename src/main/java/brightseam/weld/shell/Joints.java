package brightseam.weld.shell;

import brightseam.device.SeriesEvidence;
import brightseam.kernel.ContactKind;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.Attempts;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.people.Person;
import brightseam.people.Signer;
import brightseam.picture.shell.Pictures;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Disposition;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.ArcFacts;
import brightseam.weld.ColourScale;
import brightseam.weld.Joint;
import brightseam.weld.JointCommand;
import brightseam.weld.JointDecider;
import brightseam.weld.JointEvent;
import brightseam.weld.JudgeFacts;
import brightseam.weld.MapJoint;
import brightseam.weld.WeldMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * The joints of the shop: what stands against an arc, arcs, evidence, judgements. Whatever happens to a joint is stored
 * together with what its travellers' records say of it.
 */
@Service
public class Joints {

    private static final List<Use> LIGHT = List.of(new Use(ContactKind.GAUGE, "light-meter", false));

    private final EventStream<Joint, JointEvent> streams;
    private final Attempts attempts;
    private final JointRows rows;
    private final WeldMaps maps;
    private final Surroundings surroundings;
    private final JointRecord record;
    private final Travellers travellers;
    private final Supplies supplies;
    private final Pictures pictures;
    private final ColourScale scale;
    private final ShopClock clock;

    Joints(Ledger ledger, JdbcClient jdbc, WeldMaps maps, Surroundings surroundings, JointRecord record,
            Travellers travellers, Supplies supplies, Pictures pictures, ColourScale scale, ShopClock clock) {
        this.streams = new EventStream<>(ledger, JointStreams.KIND);
        this.attempts = new Attempts(ledger);
        this.rows = new JointRows(jdbc);
        this.maps = maps;
        this.surroundings = surroundings;
        this.record = record;
        this.travellers = travellers;
        this.supplies = supplies;
        this.pictures = pictures;
        this.scale = scale;
        this.clock = clock;
    }

    /** Keeps the rows of the joints; for the ledger. */
    @Bean
    static Projection jointProjection(JdbcClient jdbc) {
        return new JointRows(jdbc);
    }

    /** The joint and the version of its stream; empty before its first arc. */
    public Optional<Versioned<Joint>> find(JointId joint) {
        return streams.load(joint);
    }

    /** The joint as screens show it; empty where neither map nor record has it. */
    public Optional<JointView> view(JointId id) {
        Optional<Joint> joint = find(id).map(Versioned::state);
        Optional<WeldMap.Planned> planned = joint.map(known -> new WeldMap.Planned(known.issue(), known.plan()))
                .or(() -> maps.find(id.kit()).map(Versioned::state).flatMap(map -> map.planned(id.number())));
        return planned.map(plan -> new JointView(id, plan.issue(), plan.joint(), joint, clock.now()));
    }

    /** Every joint of {@code kit}: those of the last issue of its map, and whatever else was welded; by number. */
    public List<JointView> ofKit(KitId kit) {
        TreeMap<String, JointId> ids = new TreeMap<>();
        maps.find(kit).map(Versioned::state).flatMap(WeldMap::current).ifPresent(issue ->
                issue.sheet().joints().stream().map(MapJoint::number)
                        .forEach(number -> ids.put(number, new JointId(kit, number))));
        rows.ofKit(kit).forEach(id -> ids.put(id.number(), id));
        return ids.values().stream().flatMap(id -> view(id).stream()).toList();
    }

    /** The joints that an arc was begun on in {@code session} last, by name. */
    public List<JointView> ofSession(SessionId session) {
        return rows.ofSession(session).stream().flatMap(id -> view(id).stream()).toList();
    }

    /** The filler that is inside with the kit of {@code joint}, by label. */
    public List<Card> fillersInside(JointId joint) {
        return surroundings.inside(joint, clock.now()).stream().flatMap(there -> there.inside().stream())
                .flatMap(id -> travellers.find(id).stream()).filter(SurroundingsOfShop::isFiller).toList();
    }

    /**
     * Everything that stands against an arc now, the travellers' own rules among it; empty where it may be struck.
     *
     * @throws IllegalArgumentException for a badge that nobody holds
     */
    public List<Refusal> objections(Actor actor, JointId joint, ArcRequest request) {
        return start(origin(actor), joint, request).broken();
    }

    /**
     * Begins an arc; the welder is whoever acts. What the travellers' records have against it stands against it too.
     *
     * @throws IllegalArgumentException for a badge that nobody holds
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Joint> startArc(Actor actor, JointId joint, ArcRequest request) {
        return attempts.commit(() -> start(origin(actor), joint, request));
    }

    /** Ends the arc that runs on {@code joint}, whoever began it. Its evidence follows once the readings are in. */
    public Outcome<Joint> stopArc(Actor actor, JointId joint) {
        return attempts.commit(() -> prepare(new JointCommand.StopArc(joint, origin(actor))));
    }

    /** Judges {@code joint}. */
    public Outcome<Joint> judge(Actor actor, JointId joint, Judging judging, Signer signer) {
        return attempts.commit(() -> judge(origin(actor), joint, judging, signer));
    }

    /** Joints whose readings have not all been looked at. */
    List<JointId> notSettled() {
        return rows.notSettled();
    }

    /** Writes down what {@code proven} says of {@code owed}, here and in the travellers' records. */
    Outcome<Joint> takeEvidence(JointId id, Joint.Owed owed, SeriesEvidence proven) {
        Origin origin = new Origin(clock.now(), Origin.SHOP, "server", clock.isDemo());
        return attempts.commit(() -> {
            Joint before = find(id).map(Versioned::state).orElseThrow();
            var oxygen = before.arcs().get(owed.run() - 1).setting().oxygen();
            return both(prepare(new JointCommand.TakeEvidence(id, owed.run(), owed.stretch(),
                            ProvenNumbers.own(oxygen.meter(), oxygen.ppmMax(), owed, proven), origin)),
                    record.evidence(origin, before, owed, proven));
        });
    }

    private Prepared<Joint> start(Origin origin, JointId id, ArcRequest request) {
        Optional<Joint> joint = find(id).map(Versioned::state);
        Person welder = surroundings.person(origin.by())
                .orElseThrow(() -> new IllegalArgumentException("nobody holds badge " + origin.by()));
        ArcFacts facts = surroundings.facts(id, joint, request, welder, origin.at());
        List<Refusal> against = new ArrayList<>(
                JointDecider.objections(id, joint, request.purpose(), facts, origin.at()));
        int run = joint.map(known -> known.arcs().size()).orElse(0) + 1;
        joint.map(Joint::plan).or(() -> facts.planned().map(WeldMap.Planned::joint)).ifPresent(plan ->
                against.addAll(record.objections(origin, id, run, plan, facts)));
        if (!against.isEmpty()) {
            return new Prepared.Refused<>(against);
        }
        Prepared<Joint> started = prepare(new JointCommand.StartArc(id, request.purpose(), facts, origin));
        return started instanceof Prepared.Ready<Joint> ready
                ? both(started, record.arc(origin, ready.result())) : started;
    }

    private Prepared<Joint> judge(Origin origin, JointId id, Judging judging, Signer signer) {
        Optional<Joint> joint = find(id).map(Versioned::state);
        List<String> missing = judging.photographsSha256().stream()
                .filter(key -> pictures.find(key).isEmpty()).toList();
        List<Refusal> against = surroundings.againstJudging(signer.badge(), origin.at());
        if (!against.isEmpty()) {
            return new Prepared.Refused<>(against);
        }
        JudgeFacts facts = new JudgeFacts(scale, supplies.look(List.of(judging.lighting().meter()), LIGHT,
                        Surface.UNCLEANED, origin.at()).objections(), missing,
                joint.flatMap(known -> surroundings.decided(known, Disposition.USE_AS_IS)));
        Prepared<Joint> judged = prepare(new JointCommand.Judge(id, judging.verdict(), judging.colours(),
                judging.findings(), judging.lighting(), judging.photographsSha256(), judging.remark(), facts, signer,
                origin));
        return judged instanceof Prepared.Ready<Joint> ready
                ? both(judged, record.judged(origin, ready.result(), signer)) : judged;
    }

    private Prepared<Joint> prepare(JointCommand command) {
        return streams.prepare(command.joint(), state -> JointDecider.decide(state, command));
    }

    private static Prepared<Joint> both(Prepared<Joint> own, Prepared<?> told) {
        return own.with(told, (joint, cards) -> joint);
    }

    private Origin origin(Actor actor) {
        return new Origin(clock.now(), actor.badge(), actor.tablet(), clock.isDemo(), actor.label());
    }
}
