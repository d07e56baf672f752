package brightseam.app;

import brightseam.ledger.Entry;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Whether the server runs the invented shop or a shop of its own. The ledger remembers: every entry says which of the
 * two it was recorded in, so that a copied or restored folder remembers as well.
 */
enum ShopKind {

    DEMO(Pattern.compile("[{,]\"demo\":false[,}]"),
            "The data folder holds the records of a shop of your own, and the demo would mix its own with them. Start"
            + " without brightseam.shop=demo (with Maven: -Dshop=empty), or give the demo another folder with"
            + " --brightseam.data=<another folder>."),
    OWN(Pattern.compile("[{,]\"demo\":true[,}]"),
            "The data folder holds the invented records of the demo shop, and real ones would be mixed with them."
            + " Start with --brightseam.shop=demo (with Maven: -Dshop=demo), or give your own shop another folder"
            + " with --brightseam.data=<another folder>.");

    private static final String DEMO_WORD = "demo";

    private final Pattern ofTheOther;
    private final String refusal;

    /** A mark in the text of an entry cannot be mistaken for the entry's own: its quotes are escaped. */
    ShopKind(Pattern ofTheOther, String refusal) {
        this.ofTheOther = ofTheOther;
        this.refusal = refusal;
    }

    static ShopKind of(boolean demo) {
        return demo ? DEMO : OWN;
    }

    /**
     * Looks whether {@code entries} were recorded in this kind of shop.
     *
     * @throws UnusableData where one of them was recorded in the other kind
     */
    void refuseRecordsOfTheOther(List<Entry> entries) {
        if (entries.stream().anyMatch(entry -> ofTheOther.matcher(entry.json()).find())) {
            throw new UnusableData(refusal, null);
        }
    }

    /**
     * Half of the server takes any spelling of the word, half would open a shop of one's own.
     *
     * @throws UnusableData where {@code shop} is the word for the demo with capitals or blanks
     */
    static void refuseMisspelled(String shop) {
        if (!shop.equals(DEMO_WORD) && shop.strip().equalsIgnoreCase(DEMO_WORD)) {
            throw new UnusableData("brightseam.shop is \"" + shop + "\". Write demo in small letters and without"
                    + " blanks, or leave it out for a shop of your own.", null);
        }
    }
}
