package brightseam.demo;

import brightseam.demo.Lots.Lot;
import brightseam.kernel.BinId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.Disposition;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The second part of the demo's past: the kit in which everything happened that can happen. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Today {

    static final KitId MIXED = new KitId("K-0042");
    static final List<Lot> MAST = List.of(
            new Lot("HDF-3200-01", "Sensor mast, main tube", 1, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3200-02", "Sensor mast, cross brace", 4, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3200-03", "Sensor mast, stay tube", 3, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3200-10", "Sensor mast, foot fitting", 5, DemoHeat.FITTING_BAR, "FITTING"),
            new Lot("HDF-3200-11", "Sensor mast, clamp collar", 2, DemoHeat.COLLAR_BAR, "FITTING"),
            new Lot("HDF-3200-90", "Sensor mast, filler rods", 24, DemoHeat.WIRE, "FILLER"));

    /** The kit whose session can begin. */
    static final KitId ANCHOR = new KitId("K-0047");

    private static final StepId PASS_IN = new StepId("pass-in");
    private static final StepId PICKLE = new StepId("acid-pickle");
    private static final StepId DIMENSIONS = new StepId("dimensional-inspection");
    private static final BinId SHOP_BIN = new BinId("B-0101");

    private final Lots lots;
    private final Story story;
    private final Maps maps;
    private final TravellerActions actions;
    private final InspectorActions inspections;
    private final Crew crew;
    private final Actor ilka;

    Today(Lots lots, Story story, Maps maps, TravellerActions actions, InspectorActions inspections, Crew crew) {
        this.lots = lots;
        this.story = story;
        this.maps = maps;
        this.actions = actions;
        this.inspections = inspections;
        this.crew = crew;
        this.ilka = crew.actor(DemoPerson.ILKA_FERROW);
    }

    /** Plays it. */
    void play() {
        lots.open(MIXED, "Lander 7, sensor mast", Duration.ofHours(36), MAST);
        List<TravellerId> released = lots.releaseForTheBench(MIXED, MAST);
        passedIn(released.get(2));
        rejectedPiece(released.get(3));
        reworked(released.get(4));
        bareHand(released.get(1));
        overrun(released.get(0));
        readyForTheChamber();
    }

    /** Everything of the anchor frame lies in its sealed bags, and its weld map is issued. */
    private void readyForTheChamber() {
        lots.open(ANCHOR, "Lander 9, anchor frame", Duration.ofHours(22), Frame.ANCHOR);
        List<TravellerId> anchor = lots.release(ANCHOR, Frame.ANCHOR);
        maps.anchor(ANCHOR);
        story.advance(anchor.subList(0, 2), PASS_IN);
        story.advance(anchor.get(2), PASS_IN);
        story.advance(anchor.get(3), PASS_IN);
    }

    /** The window of the filler rods is nearly used up: they lie open. */
    void openWindow(TravellerId rods) {
        story.advance(rods, new StepId("bagging"));
    }

    /** In the chamber by the revision before; the last stamp is missing. A wrong bin was refused on the way. */
    private void passedIn(TravellerId stays) {
        story.advance(List.of(stays), Today::isBagDue);
        actions.putInBin(ilka, List.of(stays), SHOP_BIN);
        story.advance(stays, new StepId("record-review"));
    }

    private static boolean isBagDue(NextAction action) {
        return action instanceof NextAction.PutInto put && put.step().id().value().equals("bagging");
    }

    /** One piece of five was rejected, set apart, and waits for a disposition; the other four go on. */
    private void rejectedPiece(TravellerId feet) {
        story.advance(feet, DIMENSIONS);
        Crew.done(inspections.reject(crew.actor(DemoPerson.SANNA_VEIT), feet, DIMENSIONS,
                crew.signer(DemoPerson.SANNA_VEIT), List.of(3), "Piece 3: bore 0.08 mm over the drawing's limit"));
        Crew.done(inspections.setApart(crew.actor(DemoPerson.SANNA_VEIT), feet, List.of(3),
                "Piece 3 waits for the drawing office", crew.signer(DemoPerson.SANNA_VEIT)));
        story.advance(feet, new StepId("alkaline-degrease"));
    }

    /** The weld land was too wide, went back to the deburr bench, and was in order then; it waits for its stamp. */
    private void reworked(TravellerId collars) {
        story.advance(List.of(collars), action -> action instanceof NextAction.Read read
                && read.reading().id().equals("fit-up-gap"));
        Crew.done(actions.takeReading(ilka, List.of(collars), new StepId("dimensional-check"), "fit-up-gap",
                new BigDecimal("0.22")));
        story.pass(Duration.ofMinutes(6));
        Crew.done(inspections.decide(crew.actor(DemoPerson.BRAM_ODUYA), collars, 1, Disposition.REWORK,
                Optional.of(new StepId("deburr")), "Dress the weld land and check again",
                crew.signer(DemoPerson.BRAM_ODUYA)));
        story.advance(collars, new StepId("readiness-inspection"));
    }

    /** Clean, then touched: back to the degrease. */
    private void bareHand(TravellerId braces) {
        story.advance(braces, new StepId("readiness-inspection"));
        Crew.done(actions.openBin(ilka, bin(braces)));
        Crew.done(actions.reportTouch(ilka, List.of(braces), "Bag tore, brace 2 caught with a bare hand"));
    }

    private BinId bin(TravellerId traveller) {
        return story.card(traveller).traveller().placement().orElseThrow().bin();
    }

    /** Two minutes too long in the acid; the rinse was done, an inspector has to decide. */
    private void overrun(TravellerId mast) {
        story.advance(List.of(mast), action -> action instanceof NextAction.Holding holding
                && holding.step().id().equals(PICKLE));
        story.pass(Duration.ofMinutes(7));
        Crew.done(actions.endHold(ilka, List.of(mast), PICKLE));
        story.advance(List.of(mast), action -> action instanceof NextAction.AwaitDisposition);
    }
}
