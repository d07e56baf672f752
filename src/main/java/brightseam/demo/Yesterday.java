package brightseam.demo;

import brightseam.demo.Lots.Lot;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.traveller.NextAction;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** The first part of the demo's past: a kit that is done and one that is nearly ready. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Yesterday {

    static final KitId DONE = new KitId("K-0040");
    static final KitId NEARLY_READY = new KitId("K-0041");

    private static final List<Lot> TRIAL = List.of(
            new Lot("HDF-2010-01", "Trial ring, rail tube", 2, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-2010-90", "Trial ring, filler rods", 20, DemoHeat.WIRE, "FILLER"));
    private static final List<Lot> LEGS = List.of(
            new Lot("HDF-3100-01", "Lander leg, upper tube", 3, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-3100-02", "Lander leg, lower tube", 3, DemoHeat.LEG_TUBE, "TUBE"),
            new Lot("HDF-3100-10", "Lander leg, foot socket", 3, DemoHeat.FITTING_BAR, "FITTING"),
            new Lot("HDF-3100-90", "Lander legs, filler rods", 30, DemoHeat.WIRE, "FILLER"));

    private static final StepId PASS_IN = new StepId("pass-in");
    /** Some 25 ppm in the demo's chamber. */
    private static final double PUFF_LITRES = 0.15;

    private final Lots lots;
    private final Story story;
    private final Maps maps;
    private final ChamberHands chamber;
    private final Welding welding;
    private final ChamberTrouble trouble;
    private final TravellerActions actions;
    private final InspectorActions inspections;
    private final Crew crew;

    Yesterday(Lots lots, Story story, Maps maps, ChamberHands chamber, Welding welding, ChamberTrouble trouble,
            TravellerActions actions, InspectorActions inspections, Crew crew) {
        this.lots = lots;
        this.story = story;
        this.maps = maps;
        this.chamber = chamber;
        this.welding = welding;
        this.trouble = trouble;
        this.actions = actions;
        this.inspections = inspections;
        this.crew = crew;
    }

    /** Plays it. */
    void play() {
        trialRing();
        legs();
    }

    /** Welded and closed, with a reading that was corrected and a final stamp that was refused to a fabricator. */
    private void trialRing() {
        lots.open(DONE, "Trial ring", Duration.ofHours(10), TRIAL);
        List<TravellerId> released = lots.release(DONE, TRIAL);
        TravellerId rails = released.getFirst();
        story.advance(rails, new StepId("dimensional-inspection"));
        actions.correctReading(crew.actor(DemoPerson.ILKA_FERROW), rails, new StepId("dimensional-check"),
                "fit-up-gap", new BigDecimal("0.12"), "Feeler leaf read upside down, 0.12 mm measured again",
                crew.signer(DemoPerson.ILKA_FERROW));
        story.advance(rails, PASS_IN);
        story.advance(released.get(1), PASS_IN);
        if (story.card(rails).next() instanceof NextAction.AwaitSession) {
            welded(released);
        }
        story.advance(rails, new StepId("record-review"));
        inspections.stamp(crew.actor(DemoPerson.JUNO_CASTELL), rails, new StepId("record-review"),
                crew.signer(DemoPerson.JUNO_CASTELL), "");
        story.finish(rails);
        story.finish(released.get(1));
        lots.close(DONE);
    }

    /** In one session; a puff of air came to the second joint, and the inspector let it stand. */
    private void welded(List<TravellerId> released) {
        maps.ring(DONE);
        SessionId session = chamber.open(DONE);
        chamber.checkIn(session, released);
        chamber.close(session);
        chamber.purgeUntilFit(session);
        welding.weld(new JointId(DONE, "J01"));
        trouble.puffInNextArc(PUFF_LITRES, Duration.ofSeconds(50));
        welding.weld(new JointId(DONE, "J02"));
        welding.cool(session);
        chamber.letStand(DONE, "Trial ring, carries no load; colour of the joint is to decide");
        chamber.openChamber(session);
    }

    /** Both tubes went as a load; three are ready in sealed bags, the filler waits for its stamp. */
    private void legs() {
        lots.open(NEARLY_READY, "Lander 7, legs", Duration.ofHours(32), LEGS);
        List<TravellerId> released = lots.release(NEARLY_READY, LEGS);
        story.advance(released.subList(0, 2), PASS_IN);
        story.advance(released.get(2), PASS_IN);
        story.advance(released.get(3), new StepId("readiness-inspection"));
    }
}
