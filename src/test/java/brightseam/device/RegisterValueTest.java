package brightseam.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.HexFormat;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RegisterValueTest {

    private static OptionalDouble of(RegisterKind kind, String scale, String offset, String hex) {
        return RegisterValue.of(new ModbusPoint("meter", 502, 1, false, 0, kind, new BigDecimal(scale),
                new BigDecimal(offset)), HexFormat.of().parseHex(hex));
    }

    /** 12.5 is 41480000 in IEEE 754 single precision: 1.5625 times two to the third. */
    @Test
    void a_number_is_read_by_its_kind_and_its_order_of_words() {
        assertThat(of(RegisterKind.FLOAT32, "1", "0", "41480000")).hasValue(12.5);
        assertThat(of(RegisterKind.FLOAT32_LOW_WORD_FIRST, "1", "0", "00004148")).hasValue(12.5);
        assertThat(of(RegisterKind.INT16, "1", "0", "FFFE")).hasValue(-2);
        assertThat(of(RegisterKind.UINT16, "1", "0", "FFFE")).hasValue(65_534);
        assertThat(of(RegisterKind.INT32, "1", "0", "FFFFFFFE")).hasValue(-2);
        assertThat(of(RegisterKind.INT32, "1", "0", "00010000")).hasValue(65_536);
        assertThat(of(RegisterKind.INT32_LOW_WORD_FIRST, "1", "0", "00000001")).hasValue(65_536);
    }

    @Test
    void scale_and_offset_are_reckoned_in_decimals() {
        assertThat(of(RegisterKind.UINT16, "0.1", "0", "0003")).hasValue(0.3);
        assertThat(of(RegisterKind.INT16, "0.01", "-100", "1388")).hasValue(-50);
        assertThat(of(RegisterKind.FLOAT32, "1", "0", "4144CCCD")).hasValue(12.3);
    }

    @Test
    void a_float_that_is_no_number_is_no_reading() {
        assertThat(of(RegisterKind.FLOAT32, "1", "0", "7FC00000")).isEmpty();
        assertThat(of(RegisterKind.FLOAT32, "1", "0", "7F800000")).isEmpty();
    }

    @Test
    void too_few_registers_are_a_mistake() {
        assertThatThrownBy(() -> of(RegisterKind.INT32, "1", "0", "0001")).isInstanceOf(IllegalArgumentException.class);
    }
}
