package brightseam.ui.stamp;

import brightseam.kernel.TravellerId;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;

/** Ways to the prints of a record; each is made from the ledger when it is asked for. */
final class RecordLinks {

    private RecordLinks() {}

    /** Opens the PDF in a page of its own. */
    static Anchor pdf(TravellerId id) {
        Anchor link = plain("stamp/" + id + "/record.pdf", "Print the record (PDF)");
        link.setTarget(AnchorTarget.BLANK);
        link.getElement().setAttribute("aria-label", "Print the record of " + id + " as PDF, in a new page");
        return link;
    }

    /** Saves every entry as CSV. */
    static Anchor csv(TravellerId id) {
        Anchor link = plain("stamp/" + id + "/record.csv", "Entries (CSV)");
        link.getElement().setAttribute("download", id + "-entries.csv");
        return link;
    }

    /** Saves the joints as CSV. */
    static Anchor joints(TravellerId id) {
        Anchor link = plain("stamp/" + id + "/joints.csv", "Joints (CSV)");
        link.getElement().setAttribute("download", id + "-joints.csv");
        return link;
    }

    /** Saves the PDF that has the evidence attached. */
    static Anchor evidencePdf(TravellerId id) {
        Anchor link = plain("stamp/" + id + "/evidence.pdf", "Record with evidence (PDF)");
        link.getElement().setAttribute("download", id + "-record.pdf");
        return link;
    }

    /** Saves the evidence alone. */
    static Anchor evidenceJson(TravellerId id) {
        Anchor link = plain("stamp/" + id + "/evidence.json", "Evidence (JSON)");
        link.getElement().setAttribute("download", "evidence-" + id + ".json");
        return link;
    }

    /** Followed by the browser, not by the router of the views. */
    private static Anchor plain(String path, String words) {
        Anchor link = new Anchor(path, words);
        link.setRouterIgnore(true);
        link.addClassName("desk-button");
        return link;
    }
}
