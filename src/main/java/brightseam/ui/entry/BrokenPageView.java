package brightseam.ui.entry;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A page could not be shown: a fault in the program. */
@PageTitle("The page could not be shown")
@AnonymousAllowed
class BrokenPageView extends WrongTurn implements HasErrorParameter<Exception> {

    private static final Logger LOG = LoggerFactory.getLogger(BrokenPageView.class);

    BrokenPageView(Frames frames) {
        super(frames);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent entering, ErrorParameter<Exception> fault) {
        LOG.error("the page {} could not be shown", entering.getLocation().getPath(), fault.getCaughtException());
        say("The page could not be shown", "A fault in the program. What was confirmed before is stored; what was not"
                + " confirmed does not count. Holds run on: watch the clock on the wall. Tell the administrator.");
        return HttpServletResponse.SC_INTERNAL_SERVER_ERROR;
    }
}
