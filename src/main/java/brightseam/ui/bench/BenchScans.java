package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.ContactKind;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Step;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanReading;
import brightseam.supply.Scanned;
import brightseam.supply.Supply;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.ShopRefusal;
import brightseam.ui.parts.Verdict;
import brightseam.words.Wording;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a scan does, by what the card asks for. Every scan gets a verdict. */
final class BenchScans {

    private static final Expected TO_OPEN = Expected.only(LabelKind.TRAVELLER, LabelKind.BIN);

    private final BenchServices services;
    private final BenchModel model;
    private final Deeds deeds;
    private final Actor actor;

    BenchScans(BenchServices services, BenchModel model, Deeds deeds, Actor actor) {
        this.services = services;
        this.model = model;
        this.deeds = deeds;
        this.actor = actor;
    }

    /**
     * Does what {@code reading} asks for here.
     *
     * @param entry how the label came in, for the record
     */
    Verdict scan(ScanReading reading, LabelEntry entry) {
        if (!(reading instanceof OwnLabel label)) {
            return refuse(entry, expected().refuses(reading).orElseThrow());
        }
        return switch (label.kind()) {
            case TRAVELLER -> traveller(label.traveller().orElseThrow(), entry);
            case BIN -> bin(label.bin().orElseThrow(), entry);
            case STATION -> station(label.station().orElseThrow(), label, entry);
            case BADGE -> label.badge().filter(badge -> !badge.equals(actor.badge()))
                    .<Verdict>map(Verdict.HandOver::new)
                    .orElseGet(() -> new Verdict.Accepted("Your badge", "You are signed in here."));
            case SUPPLY -> supply(label.supply().orElseThrow(), label, entry);
            case HEAT, KIT -> refuse(entry, expected().refuses(label).orElseThrow());
        };
    }

    private Expected expected() {
        Optional<NextAction> next = model.next();
        if (next.filter(NextAction.PutInto.class::isInstance).isPresent()) {
            return Expected.only(LabelKind.BIN);
        }
        if (next.filter(NextAction.Begin.class::isInstance).isPresent()) {
            boolean complete = model.ready().missing(model.asked()).isEmpty();
            return Expected.only(complete ? LabelKind.STATION : LabelKind.SUPPLY);
        }
        return TO_OPEN;
    }

    private Verdict traveller(TravellerId id, LabelEntry entry) {
        return model.open(id.value()).map(BenchScans::opened)
                .orElseGet(() -> refuse(entry, new ShopRefusal.TravellerUnknown(id)));
    }

    private Verdict bin(BinId bin, LabelEntry entry) {
        if (services.bins().find(bin).isEmpty()) {
            return refuse(entry, new ShopRefusal.BinNotRegistered(bin));
        }
        Optional<Verdict> said = sideAsks(bin, entry);
        if (said.isPresent()) {
            return said.get();
        }
        boolean theirs = model.load().filter(open -> open.first().traveller().placement()
                .filter(place -> place.bin().equals(bin)).isPresent()).isPresent();
        boolean empty = services.bins().inside(bin).isEmpty();
        boolean asked = model.next().filter(NextAction.PutInto.class::isInstance).isPresent();
        if (model.load().isPresent() && (asked || empty && !theirs)) {
            return put(asked ? model.ids() : model.scanned(), bin, entry);
        }
        return model.open(bin.value()).map(BenchScans::opened)
                .orElseGet(() -> refuse(entry, new BenchRefusal.NothingInside(bin)));
    }

    /** A bin that somebody was asked for while taking pieces out, or while parting the load. */
    private Optional<Verdict> sideAsks(BinId bin, LabelEntry entry) {
        Optional<Side> side = model.side();
        if (side.isPresent() && side.get() instanceof Side.TakingOut taking && taking.asksForBin()) {
            model.side(Optional.of(taking.into(Optional.of(bin))));
            return Optional.of(new Verdict.Silent());
        }
        if (side.isPresent() && side.get() instanceof Side.Moving moving
                && (moving.traveller().isPresent() || model.ids().size() == 1)) {
            Verdict verdict = put(moving.traveller().map(List::of).orElse(model.ids()), bin, entry);
            model.side(side.filter(still -> !(verdict instanceof Verdict.Accepted)));
            return Optional.of(verdict);
        }
        return Optional.empty();
    }

    private Verdict put(List<TravellerId> ids, BinId bin, LabelEntry entry) {
        Load open = model.load().orElseThrow();
        Verdict verdict = deeds.put(ids, bin, entry);
        boolean closed = services.bins().find(bin).filter(found -> found.state().closed()).isPresent();
        model.closedBin(Optional.of(bin).filter(refused -> closed && verdict instanceof Verdict.Refused));
        boolean openedByBin = LabelKind.BIN.owns(open.label());
        if (verdict instanceof Verdict.Accepted && openedByBin && ids.equals(open.ids())) {
            services.tablets().openCard(actor.tablet(), bin.value());
        }
        return verdict;
    }

    private Verdict station(StationId station, OwnLabel label, LabelEntry entry) {
        Optional<Step> step = model.startable();
        if (step.isPresent()) {
            return deeds.start(model.ids(), step.get(), station, model.ready(), entry);
        }
        return model.next().flatMap(Load::stepOf)
                .map(at -> refuse(entry, new BenchRefusal.StationNotAsked(station, at.id())))
                .orElseGet(() -> refuse(entry, TO_OPEN.refuses(label).orElseThrow()));
    }

    private Verdict supply(SupplyId supply, OwnLabel label, LabelEntry entry) {
        if (model.asked().isEmpty()) {
            return model.needsNewGloves() ? deeds.changeGloves(model.ids(), supply, entry)
                    : refuse(entry, expected().refuses(label).orElseThrow());
        }
        List<Use> asked = model.asked();
        Surface surface = model.load().orElseThrow().first().procedure()
                .surface(model.startable().orElseThrow().id());
        Scanned scanned = services.supplies().look(List.of(supply), asked, surface, services.clock().now());
        if (!scanned.objections().isEmpty()) {
            return deeds.refuse(model.ids(), attempt(entry), scanned.objections());
        }
        Supply right = scanned.known().getFirst();
        model.tick(right);
        List<Use> missing = model.ready().missing(asked);
        return new Verdict.Accepted("Right " + word(right.kind()), right.title() + ", " + right.lot() + ". "
                + (missing.isEmpty() ? "Now the station." : "Still to scan: " + missing.stream()
                        .map(use -> services.vocabulary().supplyName(use.type()))
                        .collect(Collectors.joining("; ")) + "."));
    }

    private static String word(ContactKind kind) {
        return switch (kind) {
            case WIPES -> "cloth";
            case BAGS -> "bag";
            case BATH, GLOVES, SOLVENT, CLEANER, WATER, FILLER, TOOL, GAUGE, ARGON -> Wording.words(kind.name());
        };
    }

    private Verdict refuse(LabelEntry entry, Refusal refusal) {
        return deeds.refuse(model.ids(), attempt(entry), refusal);
    }

    private static String attempt(LabelEntry entry) {
        return switch (entry) {
            case SCANNED -> "scan";
            case CAMERA -> "camera scan";
            case TYPED -> "typed label";
        };
    }

    private static Verdict opened(Load open) {
        return new Verdict.Accepted("Open", CardWriter.words(open) + ".");
    }
}
