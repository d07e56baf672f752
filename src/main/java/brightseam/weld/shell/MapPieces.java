package brightseam.weld.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Versioned;
import brightseam.traveller.Joined;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.weld.JointPart;
import brightseam.weld.MapJoint;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.stereotype.Component;

/**
 * Finds the travellers of the pieces that a weld map names by line and piece. A traveller does not say which line of
 * its kit it was released from, so lines and lots of one part, revision and procedure are matched in order.
 */
@Component
class MapPieces {

    private final Kits kits;
    private final Travellers travellers;

    MapPieces(Kits kits, Travellers travellers) {
        this.kits = kits;
        this.travellers = travellers;
    }

    /** How many pieces each line of the kit has. */
    Map<Integer, Integer> piecesByLine(KitId kit) {
        Map<Integer, Integer> pieces = new TreeMap<>();
        lines(kit).forEach(line -> pieces.put(line.lineNumber(), line.quantity()));
        return pieces;
    }

    /** The travellers that have {@code parts} in them now; what was scrapped or never released is left out. */
    Map<JointPart, TravellerId> holders(KitId kit, Collection<JointPart> parts) {
        List<KitLine> lines = lines(kit);
        List<Traveller> lots = travellers.ofKit(kit).stream().map(Card::traveller).toList();
        Map<JointPart, TravellerId> holders = new LinkedHashMap<>();
        parts.forEach(part -> lines.stream().filter(line -> line.lineNumber() == part.lineNumber()).findFirst()
                .flatMap(line -> holder(line, lines, lots, part.piece())).ifPresent(id -> holders.put(part, id)));
        return holders;
    }

    /** The parts of {@code joint} by traveller, with the pieces of each. */
    List<Joined> joined(KitId kit, MapJoint joint) {
        Map<TravellerId, List<Integer>> pieces = new TreeMap<>();
        holders(kit, joint.parts()).forEach((part, id) ->
                pieces.computeIfAbsent(id, any -> new ArrayList<>()).add(part.piece()));
        return pieces.entrySet().stream().map(entry -> new Joined(entry.getKey(), entry.getValue())).toList();
    }

    private List<KitLine> lines(KitId kit) {
        return kits.find(kit).map(Versioned::state).map(Kit::lines).orElse(List.of());
    }

    private static Optional<TravellerId> holder(
            KitLine line, List<KitLine> lines, List<Traveller> lots, int piece) {
        List<Integer> alike = lines.stream().filter(other -> other.partNumber().equals(line.partNumber())
                        && other.drawingRevision().equals(line.drawingRevision())
                        && other.procedure().equals(line.procedure()))
                .map(KitLine::lineNumber).toList();
        List<TravellerId> released = lots.stream().filter(lot -> lot.parent().isEmpty() && answers(lot, line))
                .map(Traveller::id).sorted().toList();
        int order = alike.indexOf(line.lineNumber());
        return order >= released.size() ? Optional.empty()
                : lots.stream().filter(lot -> root(lot, lots).equals(released.get(order)))
                        .filter(lot -> lot.phase() != Phase.SCRAPPED && lot.pieces().contains(piece))
                        .map(Traveller::id).findFirst();
    }

    private static boolean answers(Traveller lot, KitLine line) {
        return lot.part().partNumber().equals(line.partNumber())
                && lot.part().drawingRevision().equals(line.drawingRevision())
                && lot.procedure().id().equals(line.procedure());
    }

    private static TravellerId root(Traveller lot, List<Traveller> lots) {
        return lot.parent().flatMap(parent -> lots.stream().filter(one -> one.id().equals(parent)).findFirst())
                .map(parent -> root(parent, lots)).orElse(lot.id());
    }
}
