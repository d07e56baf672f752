package brightseam.scan;

/** The check digit of GTIN, SSCC and GLN: weights 3 and 1 from the right (GS1 General Specifications 7.9). */
public final class Gs1CheckDigit {

    private Gs1CheckDigit() {}

    /**
     * The digit for {@code digits}, which are without it.
     *
     * @throws IllegalArgumentException where anything but digits is in there
     */
    public static char of(String digits) {
        if (!isDigits(digits)) {
            throw new IllegalArgumentException("digits only");
        }
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int weight = (digits.length() - i) % 2 == 1 ? 3 : 1;
            sum += weight * (digits.charAt(i) - '0');
        }
        return (char) ('0' + (10 - sum % 10) % 10);
    }

    /** Whether {@code digits} end in their own check digit. */
    public static boolean closes(String digits) {
        int last = digits.length() - 1;
        return last > 0 && isDigits(digits) && of(digits.substring(0, last)) == digits.charAt(last);
    }

    static boolean isDigits(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
