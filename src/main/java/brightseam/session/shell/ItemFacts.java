package brightseam.session.shell;

import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Versioned;
import brightseam.material.Heat;
import brightseam.material.shell.Heats;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.session.ChamberSession;
import brightseam.session.Item;
import brightseam.session.ItemFact;
import brightseam.session.SessionRefusal;
import brightseam.supply.Supply;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.Missing;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Component;

/** Gathers what the registers know of a label that was scanned at a session. */
@Component
final class ItemFacts {

    /** The procedure that filler follows from the spool to the lock. */
    static final String FILLER_PROCEDURE = "FILLER";

    private static final int TITLE_LENGTH_MAX = 80;

    private final Travellers travellers;
    private final Bins bins;
    private final Supplies supplies;
    private final Heats heats;
    private final Sessions sessions;
    private final ChamberGear gear;

    ItemFacts(Travellers travellers, Bins bins, Supplies supplies, Heats heats, Sessions sessions, ChamberGear gear) {
        this.travellers = travellers;
        this.bins = bins;
        this.supplies = supplies;
        this.heats = heats;
        this.sessions = sessions;
        this.gear = gear;
    }

    /** What a label stands for: things with their facts, or why it stands for none. */
    record Scanned(List<ItemFact> items, List<Refusal> refusals) {}

    /** The things that {@code label} stands for: a traveller, what lies in a bin, or a supply. */
    Scanned look(ChamberSession session, String label, Duration purgeAndWork, Moment now) {
        Optional<Card> card = named(label, TravellerId::new).flatMap(travellers::find);
        if (card.isPresent()) {
            return new Scanned(List.of(fact(session, card.get(), purgeAndWork, now)), List.of());
        }
        Optional<BinId> bin = named(label, BinId::new).filter(id -> bins.find(id).isPresent());
        if (bin.isPresent()) {
            List<ItemFact> inside = travellers.inBin(bin.get()).stream()
                    .map(one -> fact(session, one, purgeAndWork, now)).toList();
            return new Scanned(inside, inside.isEmpty()
                    ? List.of(new SessionRefusal.BinHoldsNothing(bin.get())) : List.of());
        }
        return named(label, SupplyId::new).flatMap(supplies::find).map(Versioned::state)
                .map(supply -> new Scanned(List.of(fact(session.chamber(), supply, now)), List.of()))
                .orElseGet(() -> new Scanned(List.of(), List.of(new SessionRefusal.LabelOfNothing(label))));
    }

    /** The thing that {@code card} goes with. */
    Item item(Card card) {
        Traveller traveller = card.traveller();
        Item.Kind kind = card.procedure().ref().id().equals(FILLER_PROCEDURE) ? Item.Kind.FILLER : Item.Kind.PARTS;
        return new Item(kind, traveller.id().value(), card.procedure().ref().id(),
                shortened(traveller.part().description()), Math.max(1, traveller.pieces().size()));
    }

    /** The grade of the metal of {@code card}; empty where its heat is not registered. */
    Optional<String> grade(Card card) {
        HeatId heat = card.traveller().heat();
        return heats.find(heat).map(Versioned::state).map(Heat::grade);
    }

    private ItemFact fact(ChamberSession session, Card card, Duration purgeAndWork, Moment now) {
        Traveller traveller = card.traveller();
        Optional<Duration> left = traveller.phase() == Phase.ACTIVE && traveller.window() instanceof Window.Open open
                ? Optional.of(open.remaining(now)) : Optional.empty();
        List<Refusal> against = new ArrayList<>();
        if (traveller.phase() != Phase.ACTIVE && session.placed(traveller.id().value()).isEmpty()) {
            against.add(new SessionRefusal.ItemPastLock(traveller.id().value(), words(traveller.phase())));
        }
        card.missing(now).forEach(missing ->
                objection(traveller.id().value(), missing, purgeAndWork).ifPresent(against::add));
        return new ItemFact(item(card), Optional.of(traveller.kit()), grade(card), left, false,
                sessions.openWith(traveller.id().value()), against);
    }

    private ItemFact fact(StationId chamber, Supply supply, Moment now) {
        List<Refusal> material = gear.objections(chamber, supply.id());
        List<Refusal> against = new ArrayList<>(supplies.look(List.of(supply.id()),
                List.of(new Use(supply.kind(), supply.type(), false)), Surface.CLEANED, now).objections());
        against.addAll(material);
        Item item = new Item(Item.Kind.SUPPLY, supply.id().value(), supply.type(), shortened(supply.title()), 1);
        return new ItemFact(item, Optional.empty(), Optional.empty(), Optional.empty(), material.isEmpty(),
                sessions.openWith(supply.id().value()), against);
    }

    /** A window that is too short for purge and work is told by the session's own rule, which asks for more. */
    private static Optional<Refusal> objection(String label, Missing missing, Duration purgeAndWork) {
        return switch (missing) {
            case Missing.StepNotSigned one -> Optional.of(new SessionRefusal.ItemStepNotSigned(label, one.step()));
            case Missing.NotStamped one -> Optional.of(new SessionRefusal.ItemNotStamped(label, one.step()));
            case Missing.Quarantine one -> Optional.of(new SessionRefusal.ItemInQuarantine(label, one.open()));
            case Missing.NoWindow ignored -> Optional.of(new SessionRefusal.ItemNotClean(label));
            case Missing.TooLittleWindow one -> one.needed().compareTo(purgeAndWork) <= 0 ? Optional.empty()
                    : Optional.of(new SessionRefusal.ItemWindowTooShort(label, one.left(), one.needed()));
            case Missing.NotInCleanBin ignored -> Optional.of(new SessionRefusal.ItemNotInCleanBin(label));
            case Missing.BinOpen one -> Optional.of(new SessionRefusal.ItemBinOpen(label, one.bin()));
        };
    }

    private static String words(Phase phase) {
        return phase.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String shortened(String title) {
        return title.length() <= TITLE_LENGTH_MAX ? title : title.substring(0, TITLE_LENGTH_MAX);
    }

    private static <T> Optional<T> named(String label, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(label));
        } catch (IllegalArgumentException otherForm) {
            return Optional.empty();
        }
    }
}
