package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Step;
import brightseam.scan.Expected;
import brightseam.scan.LabelKind;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanReading;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.ShopRefusal;
import java.util.Optional;

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
            case HEAT, KIT, SUPPLY -> refuse(entry, expected().refuses(label).orElseThrow());
        };
    }

    private Expected expected() {
        Optional<NextAction> next = model.next();
        if (next.filter(NextAction.PutInto.class::isInstance).isPresent()) {
            return Expected.only(LabelKind.BIN);
        }
        return next.filter(NextAction.Begin.class::isInstance).isPresent()
                ? Expected.only(LabelKind.STATION) : TO_OPEN;
    }

    private Verdict traveller(TravellerId id, LabelEntry entry) {
        return model.open(id.value()).map(BenchScans::opened)
                .orElseGet(() -> refuse(entry, new ShopRefusal.TravellerUnknown(id)));
    }

    private Verdict bin(BinId bin, LabelEntry entry) {
        if (services.bins().find(bin).isEmpty()) {
            return refuse(entry, new ShopRefusal.BinNotRegistered(bin));
        }
        boolean theirs = model.load().filter(open -> open.first().traveller().placement()
                .filter(place -> place.bin().equals(bin)).isPresent()).isPresent();
        boolean empty = services.bins().inside(bin).isEmpty();
        boolean asked = model.next().filter(NextAction.PutInto.class::isInstance).isPresent();
        if (model.load().isPresent() && (asked || empty && !theirs)) {
            return put(bin, entry);
        }
        return model.open(bin.value()).map(BenchScans::opened)
                .orElseGet(() -> refuse(entry, new BenchRefusal.NothingInside(bin)));
    }

    private Verdict put(BinId bin, LabelEntry entry) {
        Load open = model.load().orElseThrow();
        Verdict verdict = deeds.put(open.ids(), bin, entry);
        boolean closed = services.bins().find(bin).filter(found -> found.state().closed()).isPresent();
        model.closedBin(Optional.of(bin).filter(refused -> closed && verdict instanceof Verdict.Refused));
        boolean openedByBin = LabelKind.BIN.owns(open.label());
        if (verdict instanceof Verdict.Accepted && openedByBin) {
            services.tablets().openCard(actor.tablet(), bin.value());
        }
        return verdict;
    }

    private Verdict station(StationId station, OwnLabel label, LabelEntry entry) {
        Optional<Step> step = model.startable();
        if (step.isPresent()) {
            return deeds.start(model.ids(), step.get(), station, model.isConfirmed(), entry);
        }
        return model.next().flatMap(Load::stepOf)
                .map(at -> refuse(entry, new BenchRefusal.StationNotAsked(station, at.id())))
                .orElseGet(() -> refuse(entry, TO_OPEN.refuses(label).orElseThrow()));
    }

    private Verdict refuse(LabelEntry entry, Refusal refusal) {
        String attempt = switch (entry) {
            case SCANNED -> "scan";
            case CAMERA -> "camera scan";
            case TYPED -> "typed label";
        };
        return deeds.refuse(model.ids(), attempt, refusal);
    }

    private static Verdict opened(Load open) {
        return new Verdict.Accepted("Open", CardWriter.words(open) + ".");
    }
}
