package brightseam.report;

import brightseam.people.Role;
import brightseam.procedure.Procedure;
import brightseam.procedure.Step;
import brightseam.report.Finding.Decided;
import brightseam.traveller.Disposition;
import brightseam.traveller.TravellerEvent.AttemptRefused;
import brightseam.traveller.TravellerEvent.GlovesSpent;
import brightseam.traveller.TravellerEvent.Dispositioned;
import brightseam.traveller.TravellerEvent.NonconformanceOpened;
import brightseam.traveller.TravellerEvent.PiecesScrapped;
import brightseam.traveller.TravellerEvent.PiecesSetApart;
import brightseam.traveller.TravellerEvent.ReturnedToStep;
import brightseam.traveller.TravellerEvent.SetApart;
import brightseam.traveller.TravellerEvent.TouchReported;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells nonconformances, returns, touches, partings and refused attempts. */
final class TroubleTelling {

    private final Procedure procedure;
    private final Lookups lookups;
    private final Marks marks;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Incident> incidents = new ArrayList<>();
    private final List<RefusedAttempt> refused = new ArrayList<>();

    TroubleTelling(Procedure procedure, Lookups lookups, Marks marks) {
        this.procedure = procedure;
        this.lookups = lookups;
        this.marks = marks;
    }

    void opened(NonconformanceOpened e) {
        Step step = procedure.step(e.step());
        findings.add(new Finding(e.number(), e.cause(), StepPage.label(step), e.pass(), e.pieces(),
                FindingWords.of(e.cause(), e.text(), step, lookups.vocabulary()), e.at(), lookups.who(e.by()),
                e.signature().map(signature -> marks.of(signature, e.origin(), "step " + StepPage.label(step) + ", "
                        + Phrases.pieces(e.pieces()), List.of(Role.INSPECTOR))), Optional.empty()));
    }

    void decided(Dispositioned e) {
        Mark mark = marks.of(e.signature(), e.origin(), "nonconformance " + e.number(),
                Marks.entitled(e.disposition()));
        findings.replaceAll(finding -> finding.number() == e.number()
                ? finding.decided(new Decided(e.disposition(), Optional.empty(), e.reason(), mark)) : finding);
    }

    /** A return that follows a rework at the same moment is where that rework goes. */
    void returned(ReturnedToStep e) {
        String to = StepPage.label(procedure.step(e.step()));
        findings.replaceAll(finding -> finding.decision()
                .filter(how -> how.disposition() == Disposition.REWORK && how.returnedTo().isEmpty()
                        && how.mark().at().equals(e.at()))
                .map(how -> finding.decided(
                        new Decided(how.disposition(), Optional.of(to), how.reason(), how.mark())))
                .orElse(finding));
        incidents.add(new Incident.Returned(e.at(), lookups.who(e.by()), to, e.reason(),
                e.superseded().stream().map(step -> StepPage.label(procedure.step(step))).toList()));
    }

    void glovesSpent(GlovesSpent e) {
        incidents.add(new Incident.GlovesSpent(e.at(), lookups.who(e.by()), e.what()));
    }

    void touched(TouchReported e) {
        incidents.add(new Incident.Touched(e.at(), lookups.who(e.by()), e.what()));
    }

    void left(PiecesSetApart e) {
        incidents.add(new Incident.PiecesLeft(e.at(), lookups.who(e.by()), e.child(), e.pieces(), e.reason(),
                marks.of(e.signature(), e.origin(), Phrases.pieces(e.pieces()) + " to " + e.child(), List.of())));
    }

    void parted(SetApart e) {
        incidents.add(new Incident.Parted(e.at(), lookups.who(e.by()), e.parent(), e.parentVersion(), e.pieces(),
                e.reason(), marks.of(e.signature(), e.origin(), Phrases.pieces(e.pieces()) + " from " + e.parent(),
                        List.of())));
    }

    void scrapped(PiecesScrapped e) {
        incidents.add(new Incident.Scrapped(e.at(), lookups.who(e.by()), e.pieces()));
    }

    void refused(AttemptRefused e) {
        refused.add(new RefusedAttempt(e.at(), lookups.who(e.by()), e.origin().tablet(), e.attempt(), e.rules().stream()
                .map(rule -> lookups.wording().explain(rule.code(), rule.evidence())).toList()));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    List<Incident> incidents() {
        return List.copyOf(incidents);
    }

    List<RefusedAttempt> refused() {
        return List.copyOf(refused);
    }
}
