package brightseam.ui.entry;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.people.PersonEvent;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.SignIn;
import brightseam.scan.LabelKind;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.Autocapitalize;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.auth.AnonymousAllowed;

/** The first page of an empty shop: makes the first administrator and signs them in. */
@Route("first-run")
@PageTitle("First administrator")
@AnonymousAllowed
@StyleSheet("context://frontend/bench.css")
class FirstRunView extends Composite<ScreenFrame> implements BeforeEnterObserver {

    private final FirstRun firstRun;
    private final SignIn signIn;
    private final Wording wording;
    private final Frames frames;
    private final WorkCard card = new WorkCard("This shop is empty", "Make the first administrator");
    private final TextField code = new TextField("Code from the server's console");
    private final TextField name = new TextField("Your name, as printed beside signatures");
    private final TextField badge = new TextField("Badge label, P- and a number");
    private final PasswordField pin = new PasswordField("PIN, 4 to 8 digits");
    private final PasswordField again = new PasswordField("The same PIN again");

    FirstRunView(FirstRun firstRun, SignIn signIn, Wording wording, Frames frames) {
        this.firstRun = firstRun;
        this.signIn = signIn;
        this.wording = wording;
        this.frames = frames;
        badge.setValue("P-0001");
        code.setAutocapitalize(Autocapitalize.CHARACTERS);
        for (PasswordField secret : new PasswordField[] {pin, again}) {
            secret.setRevealButtonVisible(false);
            secret.getElement().setAttribute("autocomplete", "off");
        }
        Div fields = new Div(code, name, badge, pin, again);
        fields.addClassName("first-run");
        card.instruction("Nobody has a badge here yet. The administrator registers people, bins and stations next."
                + " The code was printed where the server was started.");
        card.add(fields);
        card.actions(Action.main("Open the shop", pressed -> open()));
        getContent().add(card);
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        if (!firstRun.isNeeded()) {
            entering.forwardTo(SignInView.class);
        }
    }

    private void open() {
        String label = badge.getValue().strip();
        if (!LabelKind.BADGE.owns(label)) {
            card.verdict().refused("Badge label", "A badge label begins with P-, such as P-0001.", "Change it.");
        } else if (!pin.getValue().equals(again.getValue())) {
            card.verdict().refused("Two PINs", "The two entries differ.", "Enter the same PIN twice.");
        } else {
            open(label);
        }
    }

    private static String place() {
        return VaadinRequest.getCurrent().getRemoteAddr();
    }

    private void open(String label) {
        try {
            BadgeId administrator = new BadgeId(label);
            switch (firstRun.open(place(), code.getValue(), administrator, name.getValue(), pin.getValue())) {
                case Decision.Accepted<PersonEvent> opened -> {
                    signIn.signIn(administrator, pin.getValue());
                    getUI().ifPresent(ui -> ui.getPage().setLocation("."));
                }
                case Decision.Refused<PersonEvent> refused -> {
                    Explanation why = wording.explain(refused.refusals().getFirst());
                    card.verdict().refused(why.word(), why.reason(), why.wayOut());
                }
            }
        } catch (IllegalArgumentException malformed) {
            card.verdict().refused("Check the fields", "Not taken: " + malformed.getMessage() + ".", "Change it.");
        }
    }
}
