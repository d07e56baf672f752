package brightseam.ui.stamp;

import brightseam.kernel.TravellerId;
import brightseam.people.Person;
import brightseam.procedure.Step;
import brightseam.procedure.Vocabulary;
import brightseam.report.Phrases;
import brightseam.report.shell.Records;
import brightseam.traveller.NextAction;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.StepRun;
import brightseam.traveller.TravellerRefusal;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DispositionForm;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.ui.trace.TraceAddress;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** The record of one traveller to read, then to accept, reject or decide on. */
@Route("stamp/:traveller")
@PageTitle("Record")
@RolesAllowed("INSPECTOR")
@StyleSheet("context://frontend/stamp.css")
class RecordView extends DeskPage implements BeforeEnterObserver {

    private final Travellers travellers;
    private final LiveTravellers live;
    private final Records records;
    private final InspectorActions inspecting;
    private final TravellerActions acting;
    private final Vocabulary vocabulary;
    private final Div standing = new Div();
    private final Div record = new Div();
    private final Div forms = new Div();
    private final Div onward = new Div();
    private Optional<TravellerId> id = Optional.empty();
    private Optional<Ask> shown = Optional.empty();
    private Optional<Card> drawn = Optional.empty();

    RecordView(Desk desk, Travellers travellers, LiveTravellers live, Records records, InspectorActions inspecting,
            TravellerActions acting, Vocabulary vocabulary, Changes changes) {
        super(desk, "Record");
        this.travellers = travellers;
        this.live = live;
        this.records = records;
        this.inspecting = inspecting;
        this.acting = acting;
        this.vocabulary = vocabulary;
        forms.setId("decide");
        forms.getElement().setAttribute("tabindex", "-1");
        show(standing, record, forms, onward);
        changes.follow(this, streams -> id.filter(open -> streams.stream().anyMatch(stream ->
                stream.family().equals("traveller") && stream.identity().equals(open.value())))
                .flatMap(travellers::find).ifPresent(this::changedElsewhere));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = entering.getRouteParameters().get("traveller").flatMap(RecordView::label);
        shown = Optional.empty();
        id.flatMap(travellers::find).ifPresentOrElse(this::refresh, () -> {
            head("No such traveller", "No traveller of this shop has that label.");
            standing.removeAll();
            standing.add(Links.to("stamp", "Back to the stamp desk"));
            record.removeAll();
            forms.removeAll();
        });
    }

    private static Optional<TravellerId> label(String text) {
        try {
            return Optional.of(new TravellerId(text));
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }

    /** Whoever was about to stamp is told who was first. */
    private void changedElsewhere(Card card) {
        Optional<StepRun> stamped = shown.flatMap(Ask::step).flatMap(card.traveller()::run).filter(StepRun::isSigned);
        refresh(card);
        stamped.filter(run -> desk().person().map(Person::badge)
                        .filter(run.signature().orElseThrow().signer().badge()::equals).isEmpty())
                .ifPresent(run -> told().refused(List.of(new TravellerRefusal.AlreadySigned(run.step(),
                        run.signature().orElseThrow().signer().name(), run.signedAt().orElseThrow()))));
    }

    private void refresh(Card card) {
        drawn = Optional.of(card);
        head(card.id() + " " + card.traveller().part().description(), card.traveller().part().partNumber() + " rev "
                + card.traveller().part().drawingRevision() + ", " + Phrases.pieces(card.traveller().pieces())
                + ", heat " + card.traveller().heat() + ", " + card.traveller().procedure().label());
        standing.removeAll();
        standing.add(standing(card));
        record.removeAll();
        records.document(card.id()).ifPresent(told -> record.add(new RecordBody(told, desk().zone())));
        onward.removeAll();
        onward.add(onward(card));
        Ask ask = Ask.of(card);
        if (!shown.equals(Optional.of(ask))) {
            shown = Optional.of(ask);
            forms.removeAll();
            decisions(card, ask);
        }
    }

    private Div standing(Card card) {
        Div all = new Div();
        all.addClassName("stamp-standing");
        Optional<Waiting> mine = Waiting.of(card, desk().now());
        Paragraph asked = new Paragraph(mine.map(row -> row.what() + ". " + row.why())
                .orElseGet(() -> "Nothing is asked of an inspector now. It is "
                        + Phrases.phase(card.traveller().phase()) + "."));
        asked.addClassName("stamp-asked");
        all.add(asked);
        mine.flatMap(Waiting::windowLeft).ifPresent(left -> all.add(new Paragraph(
                new Span("Its clean window closes "), new Left(left, desk().speed()))));
        Div ways = Forms.row(RecordLinks.pdf(card.id()), RecordLinks.evidencePdf(card.id()),
                RecordLinks.evidenceJson(card.id()), RecordLinks.csv(card.id()), RecordLinks.joints(card.id()),
                Links.to(TraceAddress.of(card.id()), "What touched it"), Links.to("stamp", "All that wait"));
        if (mine.isPresent()) {
            Anchor down = new Anchor("#decide", "Go to the decision");
            down.setRouterIgnore(true);
            ways.addComponentAsFirst(down);
        }
        ways.addClassName("stamp-ways");
        all.add(ways);
        return all;
    }

    private Div onward(Card card) {
        Div ways = Forms.row(Links.to("stamp", "All that wait"));
        ways.addClassName("stamp-ways");
        Waiting.among(live.all(), desk().now()).stream().filter(row -> !row.id().equals(card.id())).findFirst()
                .ifPresent(next -> ways.addComponentAsFirst(
                        Links.to("stamp/" + next.id(), "Next: " + next.id() + ", " + next.what())));
        return ways;
    }

    private void decisions(Card card, Ask ask) {
        Decisions decisions = new Decisions(desk(), told(), card.id(), () -> drawn.orElse(card), (word, reason) -> {
            travellers.find(card.id()).ifPresent(this::refresh);
            told().done(word, reason);
        });
        ask.inspect().ifPresent(next -> forms.add(inspection(card, next, decisions)));
        if (!ask.open().isEmpty()) {
            Div all = new Div();
            all.addClassName("stamp-pair");
            ask.open().forEach(open -> all.add(disposition(decisions, card, open)));
            forms.add(Forms.panel("Disposition", all));
        }
        if (!ask.entries().isEmpty()) {
            forms.add(new NativeDetails("Correct an entry", new CorrectForm(decisions, acting, ask.entries())));
        }
    }

    private DispositionForm disposition(Decisions decisions, Card card, Nonconformance open) {
        DispositionForm form = new DispositionForm(decisions, inspecting, card, open);
        form.addClassNames("stamp-form", "stamp-disposition");
        form.addComponentAsFirst(new H3("Nonconformance " + open.number() + ": " + Phrases.cause(open.cause()) + ", "
                + Phrases.pieces(open.pieces())));
        return form;
    }

    private Component inspection(Card card, NextAction next, Decisions decisions) {
        Step step = card.currentStep().orElseThrow();
        Div pair = new Div();
        pair.addClassName("stamp-pair");
        if (next instanceof NextAction.AwaitStamp) {
            pair.add(new AcceptForm(decisions, inspecting, step, desk().person().flatMap(Person::stamp),
                    Phrases.pieces(card.traveller().pieces())));
        } else {
            pair.add(new InspectForm(decisions, acting, vocabulary, next));
        }
        pair.add(new RejectForm(decisions, inspecting, step, card.traveller().pieces()));
        return Forms.panel("Accept or reject: step " + step.number() + " " + step.title(),
                new Paragraph(step.instruction()), pair);
    }
}
