package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.report.Pass.Late;
import brightseam.report.Pass.Superseded;
import brightseam.report.ReadingLine.Correction;
import brightseam.traveller.Placement;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent.ContactMade;
import brightseam.traveller.TravellerEvent.HoldBegun;
import brightseam.traveller.TravellerEvent.HoldEnded;
import brightseam.traveller.TravellerEvent.ReadingCorrected;
import brightseam.traveller.TravellerEvent.ReadingTaken;
import brightseam.traveller.TravellerEvent.ReturnedToStep;
import brightseam.traveller.TravellerEvent.StepEnteredLate;
import brightseam.traveller.TravellerEvent.StepSigned;
import brightseam.traveller.TravellerEvent.StepStamped;
import brightseam.traveller.TravellerEvent.StepStarted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Tells what happened at the steps. */
final class StepTelling {

    private final Procedure procedure;
    private final Lookups lookups;
    private final Marks marks;
    private final Map<StepId, List<DraftPass>> passes = new LinkedHashMap<>();
    private Optional<DraftPass> latest = Optional.empty();

    StepTelling(Procedure procedure, Lookups lookups, Marks marks) {
        this.procedure = procedure;
        this.lookups = lookups;
        this.marks = marks;
        procedure.route().forEach(step -> passes.put(step, new ArrayList<>()));
    }

    void started(StepStarted e, Optional<Placement> placement) {
        Step step = procedure.step(e.step());
        List<DraftPass> earlier = passes.get(step.id());
        DraftPass pass = new DraftPass(earlier.size() + 1, step, e, lookups);
        placement.ifPresent(pass::lies);
        earlier.add(pass);
        latest = Optional.of(pass);
        if (step.hold().isEmpty()) {
            meetGap(step, pass, e.at());
        }
    }

    /** A move belongs to the step that was begun last: an earlier one may be signed late, but it is done. */
    void moved(Placement where) {
        latest.filter(DraftPass::isOpen).ifPresent(pass -> pass.lies(where));
    }

    void touched(ContactMade e) {
        current(e.step(), pass -> pass.touched(e.contacts()));
    }

    void holdBegun(HoldBegun e) {
        current(e.step(), pass -> {
            pass.holdBegun(e.at(), lookups.who(e.by()));
            meetGap(procedure.step(e.step()), pass, e.at());
        });
    }

    void holdEnded(HoldEnded e) {
        current(e.step(), pass -> pass.holdEnded(e.at(), lookups.who(e.by())));
    }

    void read(ReadingTaken e) {
        current(e.step(), pass -> pass.read(e));
    }

    void corrected(ReadingCorrected e) {
        Step step = procedure.step(e.step());
        String label = step.readings().stream().filter(spec -> spec.id().equals(e.reading()))
                .map(spec -> spec.label()).findFirst().orElse(e.reading());
        current(e.step(), pass -> pass.correct(e.reading(), new Correction(e.from(), e.to(), e.inLimits(), e.reason(),
                marks.of(e.signature(), e.origin(), "step " + StepPage.label(step) + ", " + label,
                        List.of(Role.LEAD, Role.INSPECTOR)))));
    }

    void signed(StepSigned e, Traveller lot) {
        Step step = procedure.step(e.step());
        String with = e.loadWith().isEmpty() ? "" : ", in one load with "
                + e.loadWith().stream().map(Object::toString).collect(Collectors.joining(", "));
        current(e.step(), pass -> pass.signed(marks.of(e.signature(), e.origin(), covers(step, pass, lot) + with,
                Marks.entitled(step.signedBy())), ""));
    }

    void enteredLate(StepEnteredLate e, Traveller lot) {
        Step step = procedure.step(e.step());
        current(e.step(), pass -> pass.enteredLate(new Late(e.doneAt(), e.reason(), marks.of(e.signature(), e.origin(),
                "the time at which " + covers(step, pass, lot) + " was done", Marks.entitled(step.signedBy())))));
    }

    void stamped(StepStamped e, Traveller lot) {
        Step step = procedure.step(e.step());
        current(e.step(), pass -> pass.signed(marks.of(e.signature(), e.origin(), covers(step, pass, lot),
                Marks.entitled(step.signedBy())), e.remark()));
    }

    void returned(ReturnedToStep e) {
        Superseded why = new Superseded(e.at(), lookups.who(e.by()), e.reason());
        e.superseded().forEach(step -> current(step, pass -> pass.supersede(why)));
    }

    List<StepPage> pages() {
        return passes.entrySet().stream()
                .map(told -> new StepPage(procedure.step(told.getKey()),
                        told.getValue().stream().map(DraftPass::done).toList()))
                .toList();
    }

    private static String covers(Step step, DraftPass pass, Traveller lot) {
        return "step " + StepPage.label(step) + (pass.number() > 1 ? ", pass " + pass.number() : "") + ", "
                + Phrases.pieces(lot.pieces());
    }

    /** A gap is met by the first start of the step behind it, in a pass that a return may supersede later. */
    private void meetGap(Step to, DraftPass pass, Moment at) {
        int place = procedure.position(to.id());
        if (place == 0) {
            return;
        }
        Step from = procedure.steps().get(place - 1);
        current(from.id(), before -> before.gapRunsSince().ifPresent(since -> {
            pass.gap(new GapTaken(StepPage.label(from), from.gap().orElseThrow(), at.since(since)));
            before.gapIsMet();
        }));
    }

    private void current(StepId step, Consumer<DraftPass> change) {
        passes.getOrDefault(step, List.of()).stream().filter(DraftPass::counts)
                .reduce((earlier, later) -> later).ifPresent(change);
    }
}
