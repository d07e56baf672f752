package brightseam.ui.entry;

import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;

/** There is no such page. */
@PageTitle("No such page")
@AnonymousAllowed
class NotFoundView extends WrongTurn implements HasErrorParameter<NotFoundException> {

    NotFoundView(Frames frames) {
        super(frames);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent entering, ErrorParameter<NotFoundException> fault) {
        say("No such page", "This address leads nowhere. Nothing was lost; what was signed is stored.");
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
