package brightseam.ui.parts;

import com.vaadin.flow.component.Tag;

/**
 * What the shop made of a scan or a signature: a word, the reason, the way out, a shape, a tone, a vibration.
 *
 * <p>Accepted goes away by itself after five seconds; refused stays until it is pressed away, the next verdict comes,
 * or {@link #clear} is called.
 */
@Tag("shop-verdict")
public final class VerdictBand extends Part {

    private long run;

    /** Makes an empty band, which takes no place. */
    public VerdictBand() {
        super("verdict-band.js");
    }

    /** Says that it was accepted: a word such as {@code Signed}, and what follows. */
    public void accepted(String word, String reason) {
        show("accepted", word, reason, null);
    }

    /** Says that it was refused: a word such as {@code Wrong bin}, why, and what to do instead. */
    public void refused(String word, String reason, String wayOut) {
        show("refused", word, reason, wayOut);
    }

    /** Takes the band away. */
    public void clear() {
        say("kind", null);
    }

    private void show(String kind, String word, String reason, String wayOut) {
        say("word", word);
        say("reason", reason);
        say("way-out", wayOut);
        say("kind", kind);
        say("run", ++run);
    }
}
