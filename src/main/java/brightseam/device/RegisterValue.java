package brightseam.device;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.util.OptionalDouble;

/** Numbers out of Modbus registers: 16 bits each, high byte first (Modbus Application Protocol 1.1b3, 4.2). */
public final class RegisterValue {

    private static final int WORD_BITS = 16;

    private RegisterValue() {}

    /**
     * The value of {@code point} in {@code bytes}: raw times scale plus offset, reckoned in decimals; a float counts as
     * the shortest decimal that reads back as it. Empty where a float is infinite or no number.
     *
     * @throws IllegalArgumentException where there are fewer bytes than the registers of its kind have
     */
    public static OptionalDouble of(ModbusPoint point, byte[] bytes) {
        if (bytes.length < 2 * point.kind().registers()) {
            throw new IllegalArgumentException(bytes.length + " bytes for " + point.kind().registers() + " registers");
        }
        ByteBuffer registers = ByteBuffer.wrap(bytes);
        return switch (point.kind()) {
            case INT16 -> scaled(point, BigDecimal.valueOf(registers.getShort()));
            case UINT16 -> scaled(point, BigDecimal.valueOf(Short.toUnsignedInt(registers.getShort())));
            case INT32 -> scaled(point, BigDecimal.valueOf(registers.getInt()));
            case INT32_LOW_WORD_FIRST -> scaled(point, BigDecimal.valueOf(swapped(registers.getInt())));
            case FLOAT32 -> real(point, Float.intBitsToFloat(registers.getInt()));
            case FLOAT32_LOW_WORD_FIRST -> real(point, Float.intBitsToFloat(swapped(registers.getInt())));
        };
    }

    private static int swapped(int words) {
        return Integer.rotateLeft(words, WORD_BITS);
    }

    private static OptionalDouble real(ModbusPoint point, float raw) {
        return Float.isFinite(raw) ? scaled(point, new BigDecimal(Float.toString(raw))) : OptionalDouble.empty();
    }

    private static OptionalDouble scaled(ModbusPoint point, BigDecimal raw) {
        return OptionalDouble.of(raw.multiply(point.scale()).add(point.offset()).doubleValue());
    }
}
