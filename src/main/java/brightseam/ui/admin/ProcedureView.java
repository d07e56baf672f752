package brightseam.ui.admin;

import brightseam.kernel.Origin;
import brightseam.people.Signer;
import brightseam.procedure.Candidate;
import brightseam.procedure.CandidateState;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureApproved;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;

/** One procedure to read, and to approve exactly as it is shown. */
@Route("shop/procedures/:id")
@PageTitle("Procedure")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class ProcedureView extends DeskPage implements BeforeEnterObserver {

    private final ProcedureLibrary library;
    private final Vocabulary vocabulary;
    private Optional<String> id = Optional.empty();

    ProcedureView(Desk desk, ProcedureLibrary library, Vocabulary vocabulary) {
        super(desk, "Procedure");
        this.library = library;
        this.vocabulary = vocabulary;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = entering.getRouteParameters().get("id");
        refresh();
    }

    private void refresh() {
        Optional<Candidate> file = library.candidates().stream()
                .filter(candidate -> candidate.procedure().isPresent() && candidate.id().equals(id)).findFirst();
        file.ifPresentOrElse(this::show, () -> {
            head("Nothing to read", "No sound file of the folder holds that procedure.");
            show(Links.to("shop/procedures", "Back to the procedures"));
        });
    }

    private void show(Candidate file) {
        Procedure procedure = file.procedure().orElseThrow();
        head(procedure.ref().label() + " " + procedure.title(),
                file.file() + ", " + ProceduresView.words(file.state()));
        show(Forms.panel("Approval", approval(file, procedure)),
                Forms.panel("What it says", new ProcedurePage(procedure, vocabulary)),
                Forms.panel("Approved so far", history(procedure.ref().id())));
    }

    private Div approval(Candidate file, Procedure shown) {
        Div approval = new Div(Forms.note("Content hash of what is shown here:"), new Code(shown.ref().sha256()));
        if (file.state() != CandidateState.AWAITING_APPROVAL) {
            approval.add(Forms.note("There is nothing to approve: " + ProceduresView.words(file.state()) + "."));
            return approval;
        }
        PasswordField pin = Forms.pin("Your PIN");
        String name = desk().person().map(person -> person.name()).orElse("");
        approval.add(Forms.note("Read it below first. Travellers that are released already keep their revision."),
                Forms.row(pin, Forms.act("Approve " + shown.ref().label() + " as " + name, () ->
                        told().signer(pin).ifPresent(by -> approve(shown, by)))));
        return approval;
    }

    private void approve(Procedure shown, Signer by) {
        Origin here = desk().origin();
        Origin signed = new Origin(here.at(), by.badge(), here.tablet(), here.demo());
        told().outcome(() -> library.approve(shown.ref(), signed)).ifPresent(done -> {
            told().done("Approved", shown.ref().label() + " is in use from now on.");
            refresh();
        });
    }

    private DeskTable<ProcedureApproved> history(String procedure) {
        return new DeskTable<ProcedureApproved>("Approved revisions, the last one is in use",
                "No revision was approved yet.")
                .text("Revision", ProcedureApproved::revision)
                .text("Approved by", approved -> approved.origin().by().value())
                .text("When", approved -> Words.stamp(approved.origin().at().wall(), desk().zone()))
                .text("Content hash", approved -> approved.sha256().substring(0, 16) + "…")
                .show(library.history(procedure));
    }
}
