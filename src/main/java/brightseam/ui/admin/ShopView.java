package brightseam.ui.admin;

import brightseam.check.shell.BackupStanding;
import brightseam.people.Role;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;

/** The way to every register. */
@Route("shop")
@PageTitle("Shop registers")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class ShopView extends DeskPage {

    ShopView(Desk desk, BackupStanding backups) {
        super(desk, "Shop registers");
        UnorderedList ways = new UnorderedList();
        ways.addClassName("desk-list");
        if (desk.holds(Role.ADMINISTRATOR)) {
            ways.add(way("people", "People", "badges, roles, PINs, qualifications"));
            ways.add(way("systems", "Shop systems", "what other systems may read and release, their tokens"));
            ways.add(way("stamps", "Stamps", "every stamp ever issued, and what became of it"));
        }
        ways.add(way("procedures", "Procedures", "read, see what is wrong with a file, approve a revision"));
        ways.add(way("heats", "Heats", "register with certificate, put on hold"));
        ways.add(way("parts", "Parts", "the shapes of the parts, for areas and masses"));
        ways.add(way("bins", "Bins", "register, set capacities, declare cleaned, retire, see what is inside"));
        ways.add(way("stations", "Stations", "register, take out of use"));
        ways.add(way("chamber", "Chambers", "volumes, flows, limits with their sources, what may go in"));
        ways.add(way("supplies", "Supplies", "gloves, cloths, solvents, tools, gauges: lots and dates"));
        ways.add(way("meters", "Meters", "install, see what they say now, tokens for their devices"));
        ways.add(way("labels", "Labels", "print labels and badges"));
        show(ways, Forms.note("A new shop begins with people, then procedures, stations, bins and heats; then a kit"
                + " can be released."));
        if (desk.holds(Role.ADMINISTRATOR)) {
            show(Forms.note(backups.words()));
        }
    }

    private static ListItem way(String path, String title, String what) {
        return new ListItem(Links.to("shop/" + path, title), new Span(": " + what));
    }
}
