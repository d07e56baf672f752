package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitCommand;
import brightseam.kit.shell.Kits;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Forms that open a kit and move its session. */
final class KitForms {

    private KitForms() {}

    /** Opens a kit and hands it to {@code opened}. */
    static Div open(Desk desk, Told told, Kits kits, Consumer<Kit> opened) {
        TextField label = Forms.text("Kit label", "begins with K-, such as K-07");
        TextField title = Forms.text("Title", "such as Lander frame 7");
        DateTimePicker due = due(Optional.empty(), desk);
        Div form = Forms.row(label, title, due, Forms.button("Open this kit", () ->
                told.guarded(() -> told.outcome(() ->
                kits.execute(new KitCommand.OpenKit(kitLabel(label.getValue()), title.getValue(), at(due, desk),
                        desk.origin()))))
                .ifPresent(kit -> {
                    told.done("Opened", kit.id() + " " + kit.title() + ". Now its parts list.");
                    label.clear();
                    title.clear();
                    opened.accept(kit);
                })));
        form.addClassName("desk-form");
        return form;
    }

    /** Moves the session of {@code kit}. */
    static Div session(Desk desk, Told told, Kits kits, Kit kit, Runnable changed) {
        DateTimePicker due = due(kit.sessionDue(), desk);
        return Forms.row(due, Forms.button("Change the session", () -> told.outcome(() ->
                kits.execute(new KitCommand.ChangeSessionDue(kit.id(), at(due, desk), desk.origin())))
                .ifPresent(moved -> {
                    told.done("Changed", "Session of " + kit.id() + ": " + words(moved, desk) + ".");
                    changed.run();
                })));
    }

    /** When the session is due, in words. */
    static String words(Kit kit, Desk desk) {
        return kit.sessionDue().map(due -> Words.when(due, desk.now().wall(), desk.zone())).orElse("not set");
    }

    private static KitId kitLabel(String text) {
        if (!text.startsWith("K-")) {
            throw new IllegalArgumentException("kit label: begins with K-");
        }
        return new KitId(text.strip());
    }

    private static DateTimePicker due(Optional<Instant> known, Desk desk) {
        DateTimePicker due = new DateTimePicker("Chamber session due (may be left empty)");
        due.setLocale(Locale.UK);
        due.setDatePlaceholder("day");
        due.setTimePlaceholder("time");
        due.setDateAriaLabel("Day of the chamber session");
        due.setTimeAriaLabel("Time of the chamber session");
        due.setValue(known.map(at -> LocalDateTime.ofInstant(at, desk.zone())).orElse(null));
        return due;
    }

    private static Optional<Instant> at(DateTimePicker due, Desk desk) {
        return due.getOptionalValue().map(local -> local.atZone(desk.zone()).toInstant());
    }
}
