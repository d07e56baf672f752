package brightseam.ui.admin;

import brightseam.procedure.Candidate;
import brightseam.procedure.CandidateState;
import brightseam.procedure.Problem;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;

/** The files of the procedure folder and how each stands to what is approved. */
@Route("shop/procedures")
@PageTitle("Procedures")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class ProceduresView extends DeskPage {

    private final ProcedureLibrary library;
    private final DeskTable<Candidate> table = new DeskTable<Candidate>("Files of the procedure folder",
            "The procedure folder holds no file. Put one there, then read the folder again.")
            .cell("Procedure", ProceduresView::link)
            .text("Title", file -> file.procedure().map(found -> found.title()).orElse(""))
            .text("File", Candidate::file)
            .text("State", file -> words(file.state()))
            .text("In use", this::inUse);
    private final Div problems = new Div();

    ProceduresView(Desk desk, ProcedureLibrary library) {
        super(desk, "Procedures");
        this.library = library;
        show(Forms.panel("Files", table, Forms.row(Forms.button("Read the folder again",
                () -> show(library.reload())))), problems);
        show(library.candidates());
    }

    private void show(List<Candidate> files) {
        table.show(files);
        problems.removeAll();
        files.stream().filter(file -> !file.problems().isEmpty()).forEach(file -> problems.add(problems(file)));
    }

    private Component problems(Candidate file) {
        UnorderedList list = new UnorderedList();
        file.problems().forEach(problem -> list.add(line(problem)));
        Div told = new Div(new H3(file.file() + ": nothing of this file is used"), list,
                Forms.note(inUse(file).equals("none") ? "No revision of it is in use."
                        : "The last approved revision stays in use: " + inUse(file) + "."));
        return Forms.panel("What is wrong", told);
    }

    private static ListItem line(Problem problem) {
        return new ListItem(new Code(problem.file() + ":" + problem.line() + ":" + problem.column()),
                new Span(" found " + problem.found() + "; expected " + problem.expected()));
    }

    private String inUse(Candidate file) {
        return file.id().flatMap(library::current).map(procedure -> procedure.ref().label()).orElse("none");
    }

    private static Component link(Candidate file) {
        return file.procedure().<Component>map(found -> Links.to("shop/procedures/" + found.ref().id(),
                found.ref().label())).orElseGet(() -> new Span(file.id().orElse("unknown")));
    }

    /** A state in words. */
    static String words(CandidateState state) {
        return switch (state) {
            case APPROVED -> "approved, in use";
            case SUPERSEDED -> "approved once, replaced by a later revision";
            case AWAITING_APPROVAL -> "waits for approval";
            case CHANGED_WITHOUT_REVISION -> "REFUSED: changed, but the revision letter is the same";
            case REVISION_TOO_LOW -> "REFUSED: revision letter below the one in use";
            case BAD -> "REFUSED: the file has problems, see below";
        };
    }
}
