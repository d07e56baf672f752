package brightseam.ui.gear;

import brightseam.chamber.ArgonForm;
import brightseam.chamber.shell.ChangeOverOrder;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import java.util.List;
import java.util.Optional;

/** Takes one source off a chamber and puts another on, as it is done at the manifold; signed. */
final class ChangeOverForm extends Div {

    private final Desk desk;
    private final Told told;
    private final ArgonDesk argon;
    private final ArgonBoard board;
    private final Select<SourceLine> off = new Select<>();
    private final Select<SourceLine> on = new Select<>();
    private final ReadingFields offReading = new ReadingFields(" of what comes off");
    private final ReadingFields onReading = new ReadingFields(" of what goes on");
    private final Checkbox isEmpty = new Checkbox("What comes off is done with: write it down as empty");

    ChangeOverForm(Desk desk, Told told, ArgonDesk argon, ArgonBoard board, Runnable after) {
        this.desk = desk;
        this.told = told;
        this.argon = argon;
        this.board = board;
        addClassName("argon-change");
        choose(off, "Comes off", board.sources(SourceLine.Place.FEEDS), offReading);
        choose(on, "Goes on", board.sources(SourceLine.Place.STANDS_BY), onReading);
        isEmpty.setVisible(false);
        off.addValueChangeListener(chosen -> isEmpty.setVisible(chosen.getValue() != null));
        PasswordField pin = Forms.pin("Your PIN");
        add(Forms.note("Scan the label of what comes off and of what goes on, or choose them. Readings are entered"
                        + " where no meter tells them."),
                Forms.row(off, on), offReading, onReading, isEmpty,
                Forms.row(pin, Forms.act("Change over and sign", () -> told.signer(pin).ifPresent(signer ->
                        changeOver(signer, after)))));
    }

    /** Takes up a source whose label was scanned; whether it belongs here. */
    boolean scanned(SourceLine line) {
        switch (line.place()) {
            case FEEDS -> off.setValue(line);
            case STANDS_BY -> on.setValue(line);
            case STAYS_OFF -> told.refused("Stays off", String.join(" ", line.against()), "Take another source.");
        }
        boolean taken = line.place() != SourceLine.Place.STAYS_OFF;
        if (taken) {
            scrollIntoView();
        }
        return taken;
    }

    private void changeOver(Signer signer, Runnable after) {
        told.guarded(() -> {
            ChangeOverOrder order = new ChangeOverOrder(board.station(), id(off), id(on),
                    offReading.reading(desk.now()), onReading.reading(desk.now()), isEmpty.getValue());
            return told.outcome(() -> argon.watch().changeOver(order, desk.origin(), signer));
        }).ifPresent(chamber -> {
            told.done("Changed over", chamber.connected().isEmpty() ? "Nothing feeds " + chamber.station() + " now."
                    : chamber.station() + " is fed by " + String.join(", ", chamber.connected().stream()
                            .map(SupplyId::value).toList()) + " now.");
            after.run();
        });
    }

    private void choose(Select<SourceLine> select, String label, List<SourceLine> lines, ReadingFields reading) {
        select.setLabel(label);
        select.setItems(lines);
        select.setEmptySelectionAllowed(true);
        select.setEmptySelectionCaption("nothing");
        select.setItemLabelGenerator(line -> line == null ? "nothing" : line.supply() + " " + line.title());
        select.addClassName("argon-choice");
        select.addValueChangeListener(chosen ->
                reading.ask(Optional.ofNullable(chosen.getValue()).flatMap(this::form)));
    }

    private Optional<ArgonForm> form(SourceLine line) {
        return argon.source(line.supply()).map(source -> source.vessel().form());
    }

    private static Optional<SupplyId> id(Select<SourceLine> select) {
        return Optional.ofNullable(select.getValue()).map(SourceLine::supply);
    }
}
