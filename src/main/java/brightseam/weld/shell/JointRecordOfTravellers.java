package brightseam.weld.shell;

import brightseam.device.SeriesEvidence;
import brightseam.kernel.ContactKind;
import brightseam.kernel.JointId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.ledger.Versioned;
import brightseam.people.Signer;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.ArcFact;
import brightseam.traveller.Contact;
import brightseam.traveller.Joined;
import brightseam.traveller.JointFact;
import brightseam.traveller.JudgedFact;
import brightseam.traveller.Photograph;
import brightseam.traveller.SpanFact;
import brightseam.traveller.shell.ChamberRecord;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.AcceptanceTable;
import brightseam.weld.Arc;
import brightseam.weld.ArcFacts;
import brightseam.weld.ArcSetting;
import brightseam.weld.BackSide;
import brightseam.weld.ColourScale;
import brightseam.weld.ColoursSeen;
import brightseam.weld.FillerClass;
import brightseam.weld.HotStretch;
import brightseam.weld.Joint;
import brightseam.weld.Judgement;
import brightseam.weld.MapJoint;
import brightseam.weld.Verdict;
import brightseam.weld.WeldColour;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Says to the travellers of a joint what happened to it, in the words of their records. */
@Component
class JointRecordOfTravellers implements JointRecord {

    private static final String NO_FILLER = "none";
    private static final int COLOUR_LENGTH_MAX = 40;

    private final MapPieces pieces;
    private final Travellers travellers;
    private final Supplies supplies;
    private final ColourScale scale;
    private final ChamberRecord record;

    JointRecordOfTravellers(MapPieces pieces, Travellers travellers, Supplies supplies, ColourScale scale,
            ChamberRecord record) {
        this.pieces = pieces;
        this.travellers = travellers;
        this.supplies = supplies;
        this.scale = scale;
        this.record = record;
    }

    @Override
    public List<Refusal> objections(Origin origin, JointId joint, int run, MapJoint plan, ArcFacts facts) {
        List<Joined> parts = pieces.joined(joint.kit(), plan);
        return facts.chamber().filter(chamber -> !parts.isEmpty()).map(chamber -> record.noteArc(origin,
                        new ArcFact(joint, chamber.session(), chamber.chamber(), run, parts, NO_FILLER,
                                facts.welder().badge(), backSide(plan.backSide()), List.of(), chamber.simulated()))
                .broken()).orElse(List.of());
    }

    @Override
    public Prepared<?> arc(Origin origin, Joint joint) {
        return record.noteArc(origin, arc(joint));
    }

    @Override
    public Prepared<?> evidence(Origin origin, Joint joint, Joint.Owed owed, SeriesEvidence proven) {
        return record.noteJoint(origin, evidence(joint, owed, proven));
    }

    @Override
    public Prepared<?> judged(Origin origin, Joint joint, Signer signer) {
        return record.noteJudged(origin, judged(joint), signer);
    }

    private ArcFact arc(Joint joint) {
        Arc arc = joint.lastArc().orElseThrow();
        ArcSetting setting = arc.setting();
        return new ArcFact(joint.id(), setting.session(), setting.chamber(), arc.run(), parts(joint, setting),
                filler(joint.plan(), setting), setting.welder(), backSide(setting.backSide()), contacts(setting),
                setting.simulated());
    }

    private JointFact evidence(Joint joint, Joint.Owed owed, SeriesEvidence proven) {
        Arc arc = joint.arcs().get(owed.run() - 1);
        ArcSetting setting = arc.setting();
        Moment stopped = arc.stoppedAt().orElseThrow();
        BigDecimal known = setting.oxygen().ppm().orElse(BigDecimal.ZERO);
        return new JointFact(joint.id(), setting.session(), setting.chamber(), arc.run(), arc.startedAt(), stopped,
                owed.stretch() == HotStretch.COOLING ? owed.to() : stopped, parts(joint, setting),
                filler(joint.plan(), setting), setting.welder(), backSide(setting.backSide()), setting.oxygen().meter(),
                setting.oxygen().ppmMax(), ProvenNumbers.highest(proven.highest()).orElse(known),
                ProvenNumbers.mean(proven.meanTimeWeighted()).orElse(known),
                ProvenNumbers.seconds(proven.millisAbove()),
                proven.excursions().stream().map(one -> span(owed, one.fromMillis(), one.toMillis(),
                        ProvenNumbers.highest(one.peak()))).toList(),
                proven.gaps().stream().map(one -> span(owed, one.fromMillis(), one.toMillis(),
                        Optional.empty())).toList(),
                proven.isProven(), proven.sha256(), contacts(setting), setting.simulated() || proven.simulated());
    }

    private JudgedFact judged(Joint joint) {
        Judgement judged = joint.judgements().getLast();
        Arc arc = joint.lastArc().orElseThrow();
        List<Photograph> photographs = new ArrayList<>();
        judged.photographsSha256().forEach(key ->
                photographs.add(new Photograph(joint.id() + ", picture " + (photographs.size() + 1), key)));
        return new JudgedFact(joint.id(), arc.setting().session(), arc.run(), parts(joint, arc.setting()),
                colour(judged.colours()), judged.verdict() == Verdict.ACCEPT, findings(judged),
                scale.table(judged.table()).map(AcceptanceTable::title).orElse(judged.table()),
                judged.lighting().lux().toPlainString() + " lx, " + judged.lighting().meter(),
                String.join("; ", judged.next()), photographs);
    }

    private static SpanFact span(Joint.Owed owed, long fromMillis, long toMillis, Optional<BigDecimal> highest) {
        return new SpanFact(ProvenNumbers.at(owed, fromMillis), ProvenNumbers.at(owed, toMillis), highest);
    }

    private List<Joined> parts(Joint joint, ArcSetting setting) {
        List<Joined> now = pieces.joined(joint.id().kit(), joint.plan());
        return now.isEmpty() ? setting.travellers().stream().map(Joined::lot).toList() : now;
    }

    private static String filler(MapJoint plan, ArcSetting setting) {
        return setting.filler().flatMap(label -> plan.filler()).map(FillerClass::printed).orElse(NO_FILLER);
    }

    private static String backSide(BackSide backSide) {
        return backSide.name().toLowerCase(Locale.ROOT);
    }

    private List<Contact> contacts(ArcSetting setting) {
        List<Contact> contacts = new ArrayList<>();
        setting.filler().ifPresent(label -> contacts.add(new Contact(ContactKind.FILLER, "filler-wire", label,
                travellers.find(new TravellerId(label)).map(card -> card.traveller().heat().value()).orElse("-"))));
        contacts.add(contact(ContactKind.ARGON, "argon", setting.argon().source(), setting.argon().lot()));
        contacts.add(contact(ContactKind.GAUGE, "gauge", setting.oxygen().meter(), "-"));
        setting.moisture().ifPresent(reading ->
                contacts.add(contact(ContactKind.GAUGE, "gauge", reading.meter(), "-")));
        setting.backSideOxygen().ifPresent(reading ->
                contacts.add(contact(ContactKind.GAUGE, "gauge", reading.meter(), "-")));
        return contacts.stream().distinct().toList();
    }

    private Contact contact(ContactKind kind, String type, SupplyId id, String lot) {
        return supplies.find(id).map(Versioned::state)
                .map((Supply known) -> new Contact(kind, known.type(), id.value(), known.lot()))
                .orElseGet(() -> new Contact(kind, type, id.value(), lot));
    }

    private String colour(ColoursSeen seen) {
        String weld = seen.onTheWeld().stream().map(this::name).collect(Collectors.joining(", "));
        String all = weld + seen.bandAtTheEdge().map(band -> "; edge " + name(band)).orElse("")
                + (seen.beforeBrushing() ? "" : "; brushed");
        return all.length() <= COLOUR_LENGTH_MAX ? all : all.substring(0, COLOUR_LENGTH_MAX);
    }

    private String name(String key) {
        return scale.colour(key).map(WeldColour::name).orElse(key).toLowerCase(Locale.ROOT);
    }

    private List<String> findings(Judgement judged) {
        List<String> all = new ArrayList<>();
        judged.findings().forEach(note -> all.add(
                scale.finding(note.kind()).map(kind -> kind.name()).orElse(note.kind()) + ": " + note.text()));
        judged.remark().ifPresent(all::add);
        return all;
    }
}
