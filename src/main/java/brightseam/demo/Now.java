package brightseam.demo;

import brightseam.demo.Lots.Lot;
import brightseam.kernel.BinId;
import brightseam.kernel.KitId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.TravellerActions;
import java.time.Duration;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The end of the demo's past: what is going on at the moment that somebody first looks. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Now {

    static final KitId JUST_RELEASED = new KitId("K-0043");
    static final List<Lot> BALLAST = List.of(
            new Lot("HDF-3300-01", "Ballast bracket, long tube", 2, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-3300-02", "Ballast bracket, short tube", 4, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-3300-03", "Ballast bracket, gusset tube", 2, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-3300-04", "Ring frame, spacer tube", 6, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3300-05", "Ring frame, rail tube", 2, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3300-06", "Ring frame, tie tube", 3, DemoHeat.MAST_TUBE, "TUBE"),
            new Lot("HDF-3300-07", "Ring frame, strut tube", 2, DemoHeat.LEG_TUBE, "TUBE"));

    private static final StepId DEGREASE = new StepId("alkaline-degrease");
    private static final StepId PICKLE = new StepId("acid-pickle");
    /** Of the five minutes that the procedure allows. */
    private static final Duration IN_THE_ACID = Duration.ofSeconds(150);

    private final Lots lots;
    private final Story story;
    private final Shelf shelf;
    private final TravellerActions actions;
    private final Crew crew;

    Now(Lots lots, Story story, Shelf shelf, TravellerActions actions, Crew crew) {
        this.lots = lots;
        this.story = story;
        this.shelf = shelf;
        this.actions = actions;
        this.crew = crew;
    }

    /** Opens the kit and brings its lots to the door of the wet line; the labels of the lots. */
    List<TravellerId> prepare() {
        lots.open(JUST_RELEASED, "Lander 7, ballast and ring", Duration.ofHours(40), BALLAST);
        List<TravellerId> released = lots.release(JUST_RELEASED, BALLAST);
        story.advance(released.get(2), new StepId("dimensional-inspection"));
        story.advance(released.get(6), DEGREASE);
        story.advance(released.subList(3, 6), DEGREASE);
        return released;
    }

    /** One is cut, three go through the wet line: at the end one is in the acid, two wait beside it in their basket. */
    void play(List<TravellerId> released) {
        story.advance(List.of(released.get(1)), action -> action instanceof NextAction.Read);
        List<TravellerId> load = released.subList(3, 6);
        story.advance(load, PICKLE);
        TravellerId first = load.getFirst();
        BinId basket = shelf.free(List.of(BinClass.PROCESS_BASKET), 1);
        Crew.done(actions.putInBin(crew.actor(DemoPerson.ILKA_FERROW), List.of(first), basket));
        story.advance(List.of(first), action -> action instanceof NextAction.Holding);
        story.pass(IN_THE_ACID);
    }
}
