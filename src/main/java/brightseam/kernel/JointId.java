package brightseam.kernel;

/**
 * One joint of a kit's weld map: the kit's label, a point and the joint's own number, such as {@code K-0047.J03}.
 *
 * @param kit the kit that it belongs to
 * @param number its number on the weld map, such as {@code J03}
 */
public record JointId(KitId kit, String number) implements Comparable<JointId> {

    private static final int NUMBER_LENGTH_MAX = 6;

    /** Refuses a number that is no identity of at most six characters, or that has a point. */
    public JointId {
        Syntax.identity("joint number", number);
        if (number.length() > NUMBER_LENGTH_MAX || number.contains(".")) {
            throw new IllegalArgumentException("joint number: at most six characters without a point");
        }
    }

    /** Reads what {@link #toString()} writes. */
    public static JointId parse(String text) {
        int point = text.lastIndexOf('.');
        if (point < 1) {
            throw new IllegalArgumentException("a joint is named by its kit, a point and its number");
        }
        return new JointId(new KitId(text.substring(0, point)), text.substring(point + 1));
    }

    @Override
    public int compareTo(JointId other) {
        int byKit = kit.compareTo(other.kit);
        return byKit != 0 ? byKit : number.compareTo(other.number);
    }

    @Override
    public String toString() {
        return kit + "." + number;
    }
}
