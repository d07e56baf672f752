package brightseam.ui.trace;

import brightseam.scan.OwnLabel;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.TraceQuestion;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Asks about a thing by hand, where there is no label to scan, or only a maker's lot is known. */
final class QuestionForm extends Div {

    private final Select<ThingKind> kind = new Select<>();
    private final TextField label = Forms.text("Label", "as printed, such as B-0142");
    private final TextField lot = Forms.text("Lot, serial number or fill", "may be left empty");
    private final DateTimePicker from;
    private final DateTimePicker until;
    private final ZoneId zone;

    QuestionForm(ZoneId zone, Consumer<Supplier<String>> ask) {
        this.zone = zone;
        kind.setLabel("What sort of thing");
        kind.setItems(ThingKind.values());
        kind.setItemLabelGenerator(TraceWords::kind);
        kind.setValue(ThingKind.BIN);
        from = picker("Touched from (may be left empty)", "Touched from");
        until = picker("until (may be left empty)", "Touched until");
        addClassName("desk-form");
        add(Forms.row(kind, label, lot, from, until, Forms.act("Trace it",
                () -> ask.accept(() -> TraceAddress.of(question(), zone)))));
    }

    /** Shows what is asked about. */
    void show(TraceQuestion question) {
        kind.setValue(question.kind());
        label.setValue(question.label().orElse(""));
        lot.setValue(question.lot().filter(text -> !text.equals(Thing.NO_LOT)).orElse(""));
        from.setValue(question.from().map(this::local).orElse(null));
        until.setValue(question.until().map(this::local).orElse(null));
    }

    /** What a scanned label asks about; empty for a traveller's. {@code labelled} are the lots under a supply's. */
    static Optional<Thing> thing(OwnLabel label, List<Thing> labelled) {
        return switch (label.kind()) {
            case BIN -> Optional.of(Thing.of(ThingKind.BIN, label.id()));
            case HEAT -> Optional.of(Thing.of(ThingKind.HEAT, label.id()));
            case BADGE -> Optional.of(Thing.of(ThingKind.PERSON, label.id()));
            case STATION -> Optional.of(Thing.of(ThingKind.STATION, label.id()));
            case KIT -> Optional.of(Thing.of(ThingKind.KIT, label.id()));
            case SUPPLY -> labelled.stream().findFirst();
            case TRAVELLER -> Optional.empty();
        };
    }

    private TraceQuestion question() {
        return new TraceQuestion(kind.getValue(), text(label).map(text -> text.toUpperCase(Locale.ROOT)),
                kind.getValue().hasLots() ? text(lot) : Optional.empty(), at(from), at(until));
    }

    private static Optional<String> text(TextField field) {
        return Optional.of(field.getValue().strip()).filter(text -> !text.isEmpty());
    }

    private Optional<Instant> at(DateTimePicker picker) {
        return picker.getOptionalValue().map(local -> local.atZone(zone).toInstant());
    }

    private LocalDateTime local(Instant at) {
        return LocalDateTime.ofInstant(at, zone);
    }

    private static DateTimePicker picker(String words, String aloud) {
        DateTimePicker picker = new DateTimePicker(words);
        picker.setLocale(Locale.UK);
        picker.setDatePlaceholder("day");
        picker.setTimePlaceholder("time");
        picker.setDateAriaLabel(aloud + ", day");
        picker.setTimeAriaLabel(aloud + ", time");
        return picker;
    }
}
