package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.FeedTerms;
import brightseam.device.ModbusPoint;
import brightseam.device.RegisterKind;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;

/** How a meter's readings come in; fields that the chosen way does not need are hidden. */
final class FeedFields extends Div {

    private static final int SECONDS_A_MINUTE = 60;

    private final Select<FeedTerms.Kind> kind = new Select<>();
    private final TextField host = Forms.text("Device", "name or address on the shop's network");
    private final TextField port = Forms.text("Port", "usually 502");
    private final TextField unit = Forms.text("Unit", "0 to 255; usually 1");
    private final Select<Boolean> input = new Select<>();
    private final TextField register = Forms.text("First register", "as it is sent, counted from 0");
    private final Select<RegisterKind> form = new Select<>();
    private final TextField scale = Forms.text("Times", "such as 0.1");
    private final TextField offset = Forms.text("Plus", "such as 0");
    private final TextField minutes = Forms.text("A reading at least every, min", "such as 2");
    private final Div modbus = Forms.row(host, port, unit, input, register, form, scale, offset);
    private final Div typed = Forms.row(minutes);

    /** Fields that show {@code now}; {@code demo} shops may have simulated meters. */
    FeedFields(Feed now, boolean demo) {
        kind.setLabel("Readings come in");
        kind.setItems(Arrays.stream(FeedTerms.Kind.values())
                .filter(one -> demo || one != FeedTerms.Kind.SIMULATED).toList());
        kind.setItemLabelGenerator(FeedFields::words);
        kind.addValueChangeListener(chosen -> look());
        input.setLabel("Kind of register");
        input.setItems(false, true);
        input.setItemLabelGenerator(one -> one ? "input (function 4)" : "holding (function 3)");
        form.setLabel("How the number lies there");
        form.setItems(RegisterKind.values());
        form.setItemLabelGenerator(MeterWording::register);
        add(Forms.row(kind), modbus, typed);
        fill(FeedTerms.of(now));
        look();
    }

    /**
     * What is chosen.
     *
     * @throws IllegalArgumentException naming the field that is not filled in as it should be
     */
    Feed feed() {
        return switch (kind.getValue()) {
            case HTTP -> new Feed.Http();
            case SIMULATED -> new Feed.Simulated();
            case TYPED -> new Feed.Typed(Duration.ofMillis(Numbers.decimal("a reading at least every",
                    minutes.getValue()).movePointRight(3).multiply(BigDecimal.valueOf(SECONDS_A_MINUTE))
                    .longValue()));
            case MODBUS -> new Feed.Modbus(new ModbusPoint(host.getValue(), Numbers.whole("port", port.getValue()),
                    Numbers.whole("unit", unit.getValue()), input.getValue(),
                    Numbers.whole("first register", register.getValue()), form.getValue(),
                    Numbers.decimal("times", scale.getValue()), Numbers.decimal("plus", offset.getValue())));
        };
    }

    private void fill(FeedTerms terms) {
        kind.setValue(terms.kind());
        ModbusPoint point = terms.modbus().orElse(new ModbusPoint("meter", 502, 1, false, 0, RegisterKind.FLOAT32,
                BigDecimal.ONE, BigDecimal.ZERO));
        host.setValue(terms.modbus().isPresent() ? point.host() : "");
        port.setValue(String.valueOf(point.port()));
        unit.setValue(String.valueOf(point.unit()));
        input.setValue(point.input());
        register.setValue(String.valueOf(point.register()));
        form.setValue(point.kind());
        scale.setValue(point.scale().toPlainString());
        offset.setValue(point.offset().toPlainString());
        minutes.setValue(String.valueOf(terms.interval().map(Duration::toMinutes).orElse(2L)));
    }

    private void look() {
        modbus.setVisible(kind.getValue() == FeedTerms.Kind.MODBUS);
        typed.setVisible(kind.getValue() == FeedTerms.Kind.TYPED);
    }

    private static String words(FeedTerms.Kind kind) {
        return switch (kind) {
            case HTTP -> "sent by the device over HTTP";
            case MODBUS -> "asked over Modbus TCP";
            case TYPED -> "typed by hand";
            case SIMULATED -> "simulated, for the demo";
        };
    }
}
