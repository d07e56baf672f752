package brightseam.ui.desk;

import com.vaadin.flow.component.html.Anchor;

/** Ways from page to page. */
public final class Links {

    private Links() {}

    /** A link to {@code path} of this shop, followed without loading the page anew. */
    public static Anchor to(String path, String words) {
        Anchor link = new Anchor(path, words);
        link.getElement().setAttribute("router-link", true);
        return link;
    }
}
