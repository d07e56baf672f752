package brightseam.ui.admin;

import brightseam.kernel.BadgeId;
import brightseam.kernel.SystemId;
import brightseam.people.Signer;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemCommand;
import brightseam.remote.shell.ShopSystems;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.words.Words;
import brightseam.words.Wording;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** The shop's other systems: what they may, who answers for them, their tokens. */
@Route("shop/systems")
@PageTitle("Shop systems")
@RolesAllowed("ADMINISTRATOR")
class SystemsView extends DeskPage {

    private static final int REASON_MAX = 200;

    private final ShopSystems systems;
    private final Div shown = new Div();
    private final Select<ShopSystem> choice = new Select<>();
    private final DeskTable<ShopSystem> table = new DeskTable<ShopSystem>("Every system, those without a token too",
            "No other system of the shop is registered. Register one below; it can then read or release over REST.")
            .text("System", system -> system.id().value())
            .text("What it is", ShopSystem::title)
            .text("May", SystemsView::scopes)
            .text("Answers for it", system -> system.answering()
                    .map(who -> who.name() + ", " + who.badge()).orElse("nobody: it only reads"))
            .text("Token", this::token)
            .text("Last used", this::lastUsed);

    SystemsView(Desk desk, ShopSystems systems) {
        super(desk, "Shop systems");
        this.systems = systems;
        shown.getElement().setAttribute("role", "status");
        choice.setLabel("System");
        choice.setItemLabelGenerator(system -> system.id() + " " + system.title());
        choice.setPlaceholder("choose a system");
        show(Forms.panel("All systems", table), Forms.panel("Register a system", registration()),
                Forms.panel("Token of a system", Forms.note("A system sends its token with every request. It is shown"
                        + " once and kept nowhere; making another ends the one before."), Forms.row(choice), making(),
                        shown, withdrawing(), answering()));
        refresh();
    }

    private void refresh() {
        table.show(systems.all());
        Optional<SystemId> chosen = choice.getOptionalValue().map(ShopSystem::id);
        choice.setItems(systems.all());
        systems.all().stream().filter(system -> chosen.filter(system.id()::equals).isPresent()).findFirst()
                .ifPresent(choice::setValue);
    }

    private Div registration() {
        TextField name = Forms.text("Name", "capitals and digits, such as ORDERS-1");
        TextField title = Forms.text("What it is", "such as Order book of the office");
        CheckboxGroup<Scope> scopes = new CheckboxGroup<>("What it may do");
        scopes.setItems(Scope.values());
        scopes.setItemLabelGenerator(scope -> scope == Scope.READ ? "read" : "release travellers");
        TextField lead = Forms.text("Badge of the lead who answers", "only where it releases; such as P-0201");
        PasswordField leadPin = Forms.pin("PIN of that lead");
        PasswordField pin = Forms.pin("Your PIN");
        return Forms.row(name, title, scopes, lead, leadPin, pin, Forms.act("Register and sign", () -> {
            boolean answered = !lead.getValue().isBlank();
            Optional<Signer> answering = answered ? lead(lead, leadPin) : Optional.empty();
            if (answered && answering.isEmpty()) {
                return;
            }
            told().signer(pin).flatMap(signer -> told().guarded(() -> told().outcome(() -> systems.execute(
                    new SystemCommand.Register(new SystemId(name.getValue().strip()), title.getValue(),
                            List.copyOf(scopes.getValue()), answering, desk().origin(), signer)))))
                    .ifPresent(system -> {
                        refresh();
                        choice.setValue(systems.all().stream().filter(one -> one.id().equals(system.id()))
                                .findFirst().orElseThrow());
                        told().done("Registered", system.id() + ". Now make its token.");
                    });
        }));
    }

    private Div making() {
        PasswordField pin = Forms.pin("Your PIN, new token");
        return Forms.row(pin, Forms.act("Make a token and sign", () -> chosen().ifPresent(system ->
                told().signer(pin).flatMap(signer -> told().outcome(() -> systems.makeToken(
                        system.id(), desk().origin(), signer))).ifPresent(token -> {
                            shown.removeAll();
                            Code code = new Code(token);
                            code.addClassName("meter-token");
                            shown.add(Forms.note("Write it into the system now; it is not shown again:"), code);
                            refresh();
                            told().done("Token made", "For " + system.id() + ".");
                        }))));
    }

    private Div withdrawing() {
        TextField reason = Forms.text("Why it is withdrawn", "such as The server was sold");
        reason.setMaxLength(REASON_MAX);
        PasswordField pin = Forms.pin("Your PIN, withdrawal");
        return Forms.row(reason, pin, Forms.act("Withdraw its token and sign", () -> run(pin, "Token withdrawn",
                (system, signer) -> new SystemCommand.WithdrawToken(
                        system.id(), reason.getValue(), desk().origin(), signer))));
    }

    private Div answering() {
        TextField lead = Forms.text("Badge of another lead", "who answers for it from now on");
        PasswordField leadPin = Forms.pin("PIN of the other lead");
        PasswordField pin = Forms.pin("Your PIN, other lead");
        return Forms.row(lead, leadPin, pin, Forms.act("Have that lead answer, and sign", () ->
                lead(lead, leadPin).ifPresent(answering -> run(pin, "Answered for", (system, signer) ->
                        new SystemCommand.AnswerFor(system.id(), desk().origin(), signer, answering)))));
    }

    private void run(PasswordField pin, String word, BiFunction<ShopSystem, Signer, SystemCommand> command) {
        chosen().ifPresent(system -> told().signer(pin).flatMap(signer -> told().guarded(() ->
                told().outcome(() -> systems.execute(command.apply(system, signer))))).ifPresent(after -> {
                    shown.removeAll();
                    refresh();
                    told().done(word, after.id() + ".");
                }));
    }

    private Optional<ShopSystem> chosen() {
        if (choice.isEmpty()) {
            told().refused("No system chosen", "Nothing says which system is meant.", "Choose one from the list.");
        }
        return choice.getOptionalValue();
    }

    private Optional<Signer> lead(TextField badge, PasswordField pin) {
        return told().guarded(() -> told().signer(new BadgeId(badge.getValue().strip()), pin));
    }

    private static String scopes(ShopSystem system) {
        return system.scopes().stream().map(scope -> Wording.words(scope.name())).collect(Collectors.joining(", "));
    }

    private String token(ShopSystem system) {
        return system.token().map(token -> "in use since " + Words.stamp(token.madeAt().wall(), desk().zone())
                        + ", made by " + token.madeBy())
                .or(() -> system.withdrawn().map(end -> "WITHDRAWN " + Words.stamp(end.at().wall(), desk().zone())
                        + " by " + end.by() + ": " + end.reason()))
                .orElse("none yet");
    }

    private String lastUsed(ShopSystem system) {
        return systems.lastUsed(system.id()).map(at -> Words.stamp(at, desk().zone())).orElse("never");
    }
}
