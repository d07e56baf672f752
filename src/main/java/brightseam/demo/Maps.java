package brightseam.demo;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kit.KitCommand;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Versioned;
import brightseam.picture.Picture;
import brightseam.picture.shell.Pictures;
import brightseam.procedure.StepKind;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.JointPart;
import brightseam.weld.MapJoint;
import brightseam.weld.MapSheet;
import brightseam.weld.WeldMap;
import brightseam.weld.shell.WeldMaps;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** Draws the weld maps of the demo's kits: its own ones, and one for whatever else is to be welded. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Maps {

    private static final DemoPerson LEAD = DemoPerson.BRAM_ODUYA;

    private final WeldMaps maps;
    private final Pictures pictures;
    private final Kits kits;
    private final Travellers travellers;
    private final Crew crew;

    Maps(WeldMaps maps, Pictures pictures, Kits kits, Travellers travellers, Crew crew) {
        this.maps = maps;
        this.pictures = pictures;
        this.kits = kits;
        this.travellers = travellers;
        this.crew = crew;
    }

    /** The map of the anchor frame. */
    void anchor(KitId kit) {
        issue(kit, Frame.anchor(stored(Frame.anchorPicture())));
    }

    /** The map of the trial ring. */
    void ring(KitId kit) {
        issue(kit, Frame.ring(stored(Frame.ringPicture())));
    }

    /** Sees to it that the pieces of each of {@code asked} that is welded at all are in some joint of the kit's map. */
    void ensure(KitId kit, Collection<TravellerId> asked) {
        Optional<MapSheet> drawn = maps.find(kit).map(Versioned::state).flatMap(WeldMap::current)
                .map(issue -> issue.sheet());
        List<MapJoint> joints = new ArrayList<>(drawn.map(MapSheet::joints).orElse(List.of()));
        int before = joints.size();
        Optional<JointPart> neighbour = Optional.empty();
        boolean filler = cards(asked).stream().anyMatch(card -> !isWelded(card));
        for (Card card : cards(asked)) {
            if (isWelded(card)) {
                List<JointPart> parts = parts(kit, card.traveller());
                if (joints.stream().noneMatch(joint -> joint.parts().stream().anyMatch(parts::contains))) {
                    joints.addAll(Frame.chain(parts, neighbour, filler, joints.size()));
                }
                neighbour = Optional.of(parts.getFirst());
            }
        }
        if (joints.size() > before) {
            issue(kit, drawn.map(sheet -> sheet.with(joints)).orElseGet(() ->
                    new MapSheet("Sketch of the lead", Optional.empty(), joints)));
        }
    }

    private void issue(KitId kit, MapSheet sheet) {
        Crew.done(maps.draw(crew.actor(LEAD), kit, sheet));
        Crew.done(maps.issue(crew.actor(LEAD), kit, crew.signer(LEAD)));
    }

    private String stored(byte[] png) {
        return switch (pictures.store(png, crew.origin(LEAD))) {
            case Decision.Accepted<Picture> kept -> kept.events().getFirst().sha256();
            case Decision.Refused<Picture> refused ->
                throw new IllegalStateException("refused: " + refused.refusals());
        };
    }

    private List<Card> cards(Collection<TravellerId> ids) {
        return new TreeSet<>(ids).stream().map(id -> travellers.find(id).orElseThrow()).toList();
    }

    private static boolean isWelded(Card card) {
        return card.procedure().steps().stream().anyMatch(step -> step.kind() == StepKind.WELD);
    }

    private List<JointPart> parts(KitId kit, Traveller traveller) {
        int line = line(kit, traveller);
        return traveller.pieces().stream().sorted().map(piece -> new JointPart(line, piece)).toList();
    }

    /** Lots of one part number stand for the kit's lines of that number in order; a lot without a line gets one. */
    private int line(KitId kit, Traveller traveller) {
        List<Traveller> lots = travellers.ofKit(kit).stream().map(Card::traveller).toList();
        List<TravellerId> released = lots.stream().filter(lot -> lot.parent().isEmpty())
                .filter(lot -> lot.part().partNumber().equals(traveller.part().partNumber()))
                .map(Traveller::id).sorted().toList();
        int order = released.indexOf(root(traveller, lots).id());
        List<KitLine> lines = kits.find(kit).orElseThrow().state().lines();
        List<Integer> alike = lines.stream().filter(one -> one.partNumber().equals(traveller.part().partNumber()))
                .map(KitLine::lineNumber).toList();
        return order < alike.size() ? alike.get(order) : added(kit, traveller, lines);
    }

    private int added(KitId kit, Traveller traveller, List<KitLine> lines) {
        int number = lines.stream().mapToInt(KitLine::lineNumber).max().orElse(0) + 1;
        Crew.done(kits.execute(new KitCommand.AddLines(kit, List.of(new KitLine(number,
                traveller.part().partNumber(), traveller.part().description(), traveller.part().drawingRevision(),
                traveller.pieces().size(), traveller.procedure().id(), Optional.of(traveller.heat()))),
                crew.origin(LEAD))));
        return number;
    }

    private static Traveller root(Traveller lot, List<Traveller> lots) {
        return lot.parent().flatMap(parent -> lots.stream().filter(one -> one.id().equals(parent)).findFirst())
                .map(parent -> root(parent, lots)).orElse(lot);
    }
}
