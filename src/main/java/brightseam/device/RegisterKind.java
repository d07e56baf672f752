package brightseam.device;

/** How a number lies in Modbus registers of 16 bits. Words are named from the first register to the last. */
public enum RegisterKind {
    /** One register, two's complement. */
    INT16(1),
    /** One register, no sign. */
    UINT16(1),
    /** Two registers, two's complement, high word first. */
    INT32(2),
    /** Two registers, two's complement, low word first. */
    INT32_LOW_WORD_FIRST(2),
    /** Two registers, IEEE 754 single precision, high word first. */
    FLOAT32(2),
    /** Two registers, IEEE 754 single precision, low word first. */
    FLOAT32_LOW_WORD_FIRST(2);

    private final int registers;

    RegisterKind(int registers) {
        this.registers = registers;
    }

    /** How many registers it takes. */
    public int registers() {
        return registers;
    }
}
