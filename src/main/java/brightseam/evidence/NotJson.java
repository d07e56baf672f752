package brightseam.evidence;

/** Some text is no JSON that is taken here. */
final class NotJson extends Exception {

    private static final long serialVersionUID = 1L;

    private final int at;

    /** What is wrong, in words, and at which character, from 0. */
    NotJson(int at, String why) {
        super(why);
        this.at = at;
    }

    int at() {
        return at;
    }
}
