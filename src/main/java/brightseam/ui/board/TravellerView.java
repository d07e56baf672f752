package brightseam.ui.board;

import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.people.Role;
import brightseam.procedure.Vocabulary;
import brightseam.report.FindingWords;
import brightseam.report.Phrases;
import brightseam.scan.shell.LabelPrinter;
import brightseam.traveller.Nonconformance;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Decisions;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.DispositionForm;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.LabelTexts;
import brightseam.ui.desk.Left;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.ui.trace.TraceAddress;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** One traveller to read: where it is, what is missing, its steps so far; and what a lead may decide about it. */
@Route("board/traveller/:id")
@PageTitle("Traveller")
@RolesAllowed({"LEAD", "INSPECTOR", "ADMINISTRATOR"})
class TravellerView extends DeskPage implements BeforeEnterObserver {

    private final Travellers travellers;
    private final Kits kits;
    private final InspectorActions actions;
    private final Vocabulary vocabulary;
    private final LabelPrinter printer;
    private final Div facts = new Div();
    private final Div findings = new Div();
    private final Div apart = new Div();
    private Optional<TravellerId> id = Optional.empty();
    private List<Object> formsFor = List.of();

    TravellerView(Desk desk, Travellers travellers, Kits kits, InspectorActions actions, Vocabulary vocabulary,
            LabelPrinter printer, Changes changes) {
        super(desk, "Traveller");
        this.travellers = travellers;
        this.kits = kits;
        this.actions = actions;
        this.vocabulary = vocabulary;
        this.printer = printer;
        show(facts, findings, apart);
        changes.follow(this, streams -> id.filter(shown -> streams.stream()
                .anyMatch(stream -> stream.family().equals("traveller") && stream.identity().equals(shown.value())))
                .ifPresent(shown -> refresh()));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = label(entering, "id", TravellerId::new);
        refresh();
    }

    private void refresh() {
        id.flatMap(travellers::find).ifPresentOrElse(this::refresh, () -> {
            head("No such traveller", "No traveller of this shop has that label.");
            facts.removeAll();
            facts.add(Links.to("board", "Back to the board"));
        });
    }

    private void refresh(Card card) {
        Traveller traveller = card.traveller();
        head(card.id() + " " + traveller.part().description(), traveller.part().partNumber() + " rev "
                + traveller.part().drawingRevision() + ", "
                + Words.count(traveller.pieces().size(), "piece", "pieces") + ", heat " + traveller.heat() + ", "
                + traveller.procedure().label());
        facts.removeAll();
        facts.add(standing(card), Forms.panel("Steps so far", steps().show(
                StepLine.of(card, vocabulary, desk().zone()))));
        List<Object> forms = List.of(traveller.nonconformances(), traveller.pieces(), traveller.phase());
        if (!forms.equals(formsFor)) {
            formsFor = forms;
            findings.removeAll();
            findings.add(Forms.panel("Nonconformances", nonconformances(card)));
            apart.removeAll();
            if (desk().holds(Role.LEAD, Role.INSPECTOR) && !traveller.hasEnded()) {
                apart.add(Forms.panel("Set pieces apart",
                        new SetApartForm(desk(), told(), actions, card, this::refresh)));
            }
        }
    }

    private Component standing(Card card) {
        Optional<Kit> kit = kits.find(card.traveller().kit()).map(found -> found.state());
        BoardRow row = BoardModel.row(card, kit, desk().now());
        Paragraph verdict = new Paragraph(row.verdict());
        verdict.addClassName("row-verdict");
        UnorderedList missing = new UnorderedList();
        MissingWords.whole(card, desk().now()).forEach(words -> missing.add(new ListItem(words)));
        Div clocks = new Div();
        row.countdowns().forEach(countdown -> clocks.add(new Paragraph(
                new Span(countdown.words() + " "), new Left(countdown.left(), desk().speed()))));
        Paragraph where = new Paragraph(row.step() + "; " + row.bin() + ". Now: " + row.now() + ".");
        Div links = Forms.row(Links.to("board/kit/" + card.traveller().kit(), "Kit " + card.traveller().kit()),
                Files.pdf("Print its label", card.id() + "-label.pdf",
                        () -> printer.pages(List.of(LabelTexts.of(card.traveller(), desk().isDemo())))));
        if (desk().holds(Role.LEAD, Role.INSPECTOR)) {
            links.add(Links.to(TraceAddress.of(card.id()), "What touched it"));
        }
        if (desk().holds(Role.INSPECTOR)) {
            links.add(Links.to("stamp/" + card.id(), "Read the whole record"));
        }
        card.traveller().parent().ifPresent(parent ->
                links.add(Links.to("board/traveller/" + parent, "Set apart from " + parent)));
        return Forms.panel("Where it stands", verdict, where, clocks, missing, links);
    }

    private static DeskTable<StepLine> steps() {
        return new DeskTable<StepLine>("Steps of the procedure in order", "The procedure has no steps.")
                .text("Step", line -> line.number() + " " + line.title())
                .text("State", StepLine::state).text("Who and when", StepLine::who).text("Held", StepLine::lasted)
                .text("Readings", line -> String.join("; ", line.readings()));
    }

    private Div nonconformances(Card card) {
        Div all = new Div();
        List<Nonconformance> list = card.traveller().nonconformances();
        if (list.isEmpty()) {
            all.add(Forms.note("None. What breaks a limit opens one by itself."));
        }
        Decisions decisions = new Decisions(desk(), told(), card.id(), () -> card, (word, reason) -> {
            refresh();
            told().done(word, reason);
        });
        for (Nonconformance one : list) {
            Div item = new Div(new H3("Number " + one.number() + ": " + MissingWords.cause(card, one)),
                    new Paragraph(sentence(card, one)));
            if (one.isOpen() && !card.traveller().hasEnded()) {
                DispositionForm form = new DispositionForm(decisions, actions, card, one);
                form.addClassName("desk-form");
                item.add(form);
            }
            all.add(item);
        }
        return all;
    }

    private String sentence(Card card, Nonconformance one) {
        String concerns = one.pieces().isEmpty() ? "No piece of this lot any more"
                : "Concerns " + Phrases.pieces(one.pieces());
        String opened = concerns + "; opened " + Words.stamp(one.openedAt().wall(), desk().zone()) + ". "
                + FindingWords.of(one.cause(), one.text(), card.procedure().step(one.step()), vocabulary) + ".";
        return opened + one.decision().map(decided -> " Decided by " + decided.signature().signer().name() + ", "
                + Words.stamp(decided.at().wall(), desk().zone()) + ": " + Phrases.disposition(decided.disposition())
                + ", because: " + decided.reason()).orElse(one.isOpen() ? " Open." : "");
    }
}
