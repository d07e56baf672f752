package brightseam.ui.gear;

import brightseam.chamber.LockGear;
import brightseam.chamber.LockMethod;
import brightseam.line.Station;
import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import java.math.BigDecimal;
import java.util.List;

/** The transfer lock of a chamber: which station, how large, how it is purged, when its inner door may open. */
final class LockFields extends Div {

    private final Select<Station> station = new Select<>();
    private final TermsFields.Field volume = new TermsFields.Field("Lock, L", "its inside");
    private final Select<LockMethod.Kind> kind = new Select<>();
    private final TermsFields.Field leastTime =
            new TermsFields.Field("Argon for at least, min", "whatever a meter says");
    private final TermsFields.Field low = new TermsFields.Field("Pumped down to, bar absolute", "above 0 and below 1");
    private final TermsFields.CitedField open = new TermsFields.CitedField("Oxygen to open it, at most ppm");

    LockFields(List<Station> locks) {
        station.setLabel("Transfer lock");
        station.setItems(locks);
        station.setItemLabelGenerator(one -> one == null ? "" : one.id() + " " + one.title());
        kind.setLabel("Purged by");
        kind.setItems(LockMethod.Kind.values());
        kind.setItemLabelGenerator(one -> one == null ? "" : switch (one) {
            case SWEEP -> "a stream of argon";
            case VACUUM_CYCLES -> "pumping down and filling";
        });
        kind.addValueChangeListener(chosen -> ask(chosen.getValue()));
        ask(null);
        add(Forms.row(station, volume), Forms.row(kind, leastTime, low), open);
    }

    /**
     * The lock as keyed.
     *
     * @throws IllegalArgumentException naming the field that has a wrong form
     */
    LockGear gear() {
        LockMethod.Kind chosen = kind.getOptionalValue()
                .orElseThrow(() -> new IllegalArgumentException("purged by: choose one"));
        LockMethod method = switch (chosen) {
            case SWEEP -> LockMethod.sweep(java.time.Duration.ofSeconds(
                    leastTime.number().multiply(new BigDecimal("60")).longValue()));
            case VACUUM_CYCLES -> LockMethod.vacuumCycles(low.number());
        };
        return new LockGear(station.getOptionalValue().map(Station::id)
                .orElseThrow(() -> new IllegalArgumentException("transfer lock: choose one")), volume.number(), method,
                open.limit());
    }

    /** Shows {@code gear}. */
    void fill(LockGear gear) {
        station.getListDataView().getItems().filter(one -> one.id().equals(gear.station())).findFirst()
                .ifPresent(station::setValue);
        volume.show(gear.volumeLitres());
        kind.setValue(gear.method().kind());
        gear.method().leastTime().ifPresent(time ->
                leastTime.show(BigDecimal.valueOf(time.toSeconds()).divide(
                        new BigDecimal("60"), java.math.MathContext.DECIMAL32).stripTrailingZeros()));
        gear.method().lowPressureBarAbsolute().ifPresent(low::show);
        open.fill(gear.oxygenPpmToOpen());
    }

    private void ask(LockMethod.Kind chosen) {
        leastTime.setVisible(chosen == LockMethod.Kind.SWEEP);
        low.setVisible(chosen == LockMethod.Kind.VACUUM_CYCLES);
    }
}
