package brightseam.ui.gear;

import brightseam.chamber.ArgonForm;
import brightseam.chamber.ArgonReading;
import brightseam.kernel.Moment;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.Optional;

/** Fields for what is read off a source: pressure and temperature, or a level. */
final class ReadingFields extends Div {

    private final TextField pressure;
    private final TextField temperature;
    private final TextField level;
    private Optional<ArgonForm> form = Optional.empty();

    /** Fields whose labels end in {@code of}, such as {@code before}; hidden until a form is set. */
    ReadingFields(String of) {
        pressure = new TextField("Pressure" + of + ", bar");
        temperature = new TextField("Temperature" + of + ", °C");
        level = new TextField("Level" + of + ", %");
        addClassName("desk-row");
        add(pressure, temperature, level);
        ask(Optional.empty());
    }

    /** Asks for what is read off a vessel of {@code asked}; nothing where it is empty. */
    void ask(Optional<ArgonForm> asked) {
        form = asked;
        boolean liquid = asked.filter(ArgonForm::isLiquid).isPresent();
        pressure.setVisible(asked.isPresent() && !liquid);
        temperature.setVisible(asked.isPresent() && !liquid);
        level.setVisible(liquid);
        setVisible(asked.isPresent());
        clear();
    }

    /**
     * What was keyed; empty where nothing was.
     *
     * @throws IllegalArgumentException where something is missing or is no such number
     */
    Optional<ArgonReading> reading(Moment now) {
        if (form.isEmpty()) {
            return Optional.empty();
        }
        if (form.get().isLiquid()) {
            return Numbers.optional(level.getLabel(), level.getValue()).map(percent ->
                    ArgonReading.level(now, percent));
        }
        Optional<BigDecimal> bar = Numbers.optional(pressure.getLabel(), pressure.getValue());
        Optional<BigDecimal> celsius = Numbers.optional(temperature.getLabel(), temperature.getValue());
        if (bar.isPresent() != celsius.isPresent()) {
            throw new IllegalArgumentException("a pressure is read with the temperature of the wall");
        }
        return bar.map(value -> ArgonReading.pressure(now, value, celsius.orElseThrow()));
    }

    /** Empties the fields. */
    void clear() {
        pressure.clear();
        temperature.clear();
        level.clear();
    }
}
