package brightseam.ui.entry;

import com.vaadin.flow.router.AccessDeniedException;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;

/** The page is another role's. */
@PageTitle("Not your screen")
@AnonymousAllowed
class NotAllowedView extends WrongTurn implements HasErrorParameter<AccessDeniedException> {

    NotAllowedView(Frames frames) {
        super(frames);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent entering, ErrorParameter<AccessDeniedException> fault) {
        say("Not your screen", "This screen belongs to another role. Go to your own, or hand the tablet to somebody"
                + " who holds the role; the administrator gives roles.");
        return HttpServletResponse.SC_FORBIDDEN;
    }
}
