package brightseam.device;

import brightseam.kernel.Syntax;
import java.math.BigDecimal;

/**
 * Where a value lies in a device that speaks Modbus TCP. The value is raw times {@code scale} plus {@code offset}.
 *
 * @param host name or address on the shop's network
 * @param port 1 to 65535; 502 is the registered one
 * @param unit the device's unit identifier, 0 to 255
 * @param input whether it lies among the input registers (function 4) rather than the holding registers (function 3)
 * @param register its first register as it is sent, counted from 0, at most 65535
 * @param kind how it lies there
 * @param scale what raw is multiplied with; not zero
 * @param offset what is added then
 */
public record ModbusPoint(String host, int port, int unit, boolean input, int register, RegisterKind kind,
        BigDecimal scale, BigDecimal offset) {

    private static final int PORT_MAX = 65_535;
    private static final int UNIT_MAX = 255;
    private static final int HOST_LENGTH_MAX = 100;

    /** Checks every part; a host is made of letters, digits, points, hyphens and colons. */
    public ModbusPoint {
        host = Syntax.text("host", host, HOST_LENGTH_MAX);
        if (!host.matches("[A-Za-z0-9.:-]+")) {
            throw new IllegalArgumentException("host: letters, digits, points, hyphens and colons only");
        }
        inside("port", port, 1, PORT_MAX);
        inside("unit", unit, 0, UNIT_MAX);
        inside("register", register, 0, PORT_MAX + 1 - kind.registers());
        if (scale.signum() == 0) {
            throw new IllegalArgumentException("scale: not zero");
        }
    }

    private static void inside(String what, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(what + ": " + low + " to " + high);
        }
    }
}
