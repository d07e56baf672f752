package brightseam.weld.shell;

import brightseam.kernel.KitId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.people.Signer;
import brightseam.picture.shell.Pictures;
import brightseam.traveller.shell.Actor;
import brightseam.weld.ColourScale;
import brightseam.weld.MapFacts;
import brightseam.weld.MapSheet;
import brightseam.weld.Spot;
import brightseam.weld.WeldMap;
import brightseam.weld.WeldMapCommand;
import brightseam.weld.WeldMapDecider;
import brightseam.weld.WeldMapEvent;
import brightseam.weld.WeldMapRefusal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The weld maps of the shop's kits. */
@Service
public class WeldMaps {

    private final EventStream<WeldMap, WeldMapEvent> streams;
    private final JointRows joints;
    private final MapPieces pieces;
    private final Pictures pictures;
    private final ColourScale scale;
    private final ShopClock clock;

    WeldMaps(Ledger ledger, JdbcClient jdbc, MapPieces pieces, Pictures pictures, ColourScale scale,
            ShopClock clock) {
        this.streams = new EventStream<>(ledger, WeldMapStreams.KIND);
        this.joints = new JointRows(jdbc);
        this.pieces = pieces;
        this.pictures = pictures;
        this.scale = scale;
        this.clock = clock;
    }

    /** The map of {@code kit} and the version of its stream. */
    public Optional<Versioned<WeldMap>> find(KitId kit) {
        return streams.load(kit);
    }

    /** What stands against issuing the map of {@code kit} as it is drawn, whoever signs; empty where nothing does. */
    public List<WeldMapRefusal> objections(KitId kit) {
        return find(kit).map(Versioned::state).map(map -> WeldMapDecider.objections(map, facts(map)))
                .orElseGet(() -> List.of(new WeldMapRefusal.MapUnknown(kit)));
    }

    /** Puts {@code sheet} in the place of what was drawn so far. */
    public Outcome<WeldMap> draw(Actor actor, KitId kit, MapSheet sheet) {
        return execute(new WeldMapCommand.DrawMap(kit, sheet, origin(actor)));
    }

    /** Puts a joint of the draft at another place of the picture. */
    public Outcome<WeldMap> move(Actor actor, KitId kit, String number, Spot spot) {
        return execute(new WeldMapCommand.MoveJoint(kit, number, spot, origin(actor)));
    }

    /** Issues what is drawn. */
    public Outcome<WeldMap> issue(Actor actor, KitId kit, Signer signer) {
        Origin origin = origin(actor);
        return streams.execute(kit, map -> WeldMapDecider.decide(map, new WeldMapCommand.IssueMap(
                kit, map.map(this::facts).orElseGet(() -> facts(kit, true)), signer, origin)));
    }

    private Outcome<WeldMap> execute(WeldMapCommand command) {
        return streams.execute(command.kit(), map -> WeldMapDecider.decide(map, command));
    }

    private MapFacts facts(WeldMap map) {
        return facts(map.kit(), map.draft().pictureSha256().flatMap(pictures::find).isPresent());
    }

    private MapFacts facts(KitId kit, boolean pictureStored) {
        return new MapFacts(pieces.piecesByLine(kit), scale.tableKeys(),
                joints.ofKit(kit).stream().map(joint -> joint.number()).collect(Collectors.toSet()), pictureStored);
    }

    private Origin origin(Actor actor) {
        return new Origin(clock.now(), actor.badge(), actor.tablet(), clock.isDemo(), actor.label());
    }
}
