package brightseam.ui.gear;

import brightseam.chamber.Chamber;
import brightseam.chamber.shell.Chambers;
import brightseam.line.Station;
import brightseam.line.shell.Stations;
import brightseam.people.Role;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;

/** The welding chambers: gear, limits and whose they are, what may go in. */
@Route("shop/chamber")
@PageTitle("Chambers")
@RolesAllowed({"ADMINISTRATOR", "INSPECTOR", "LEAD", "PROCESS_CONTROL"})
@StyleSheet("context://frontend/gear.css")
class ChambersView extends DeskPage {

    private static final String CLASS = "chamber";

    private final Chambers chambers;
    private final Stations stations;

    ChambersView(Desk desk, Chambers chambers, Stations stations, Changes changes) {
        super(desk, "Chambers");
        this.chambers = chambers;
        this.stations = stations;
        refresh();
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> stream.family().equals(CLASS))) {
                refresh();
            }
        });
    }

    private void refresh() {
        head("Chambers", "The drawing and the shop's welding procedure go before every value here.");
        List<Component> parts = new ArrayList<>();
        chambers.all().forEach(chamber -> parts.addAll(panels(chamber)));
        List<Station> bare = stations.all().stream().filter(station -> station.stationClass().equals(CLASS))
                .filter(station -> chambers.find(station.id()).isEmpty()).toList();
        bare.forEach(station -> parts.add(Forms.panel(station.id() + " " + station.title(),
                Forms.note("Nothing is known of this chamber yet."),
                mayChange() ? Forms.row(Links.to("shop/chamber/" + station.id(), "Register its gear"))
                        : new Div())));
        if (parts.isEmpty()) {
            parts.add(Forms.note("No station of the class chamber is registered. An administrator or lead registers"
                    + " stations in the shop's registers."));
        }
        show(parts.toArray(Component[]::new));
    }

    private List<Component> panels(Chamber chamber) {
        String title = chamber.station() + " " + stations.find(chamber.station())
                .map(found -> found.state().title()).orElse("");
        DescriptionList facts = new DescriptionList();
        facts.addClassName("gear-facts");
        ChamberFacts.gear(chamber, desk().now().wall(), desk().zone()).forEach(fact -> facts.add(
                new DescriptionList.Term(fact.name()), new DescriptionList.Description(fact.words())));
        Div ways = mayChange() ? Forms.row(
                Links.to("shop/chamber/" + chamber.station(), "Change gear, limits or materials"),
                Links.to("argon", "Argon")) : new Div();
        return List.of(Forms.panel(title, facts, ways), Forms.panel("Limits of " + chamber.station(),
                new DeskTable<ChamberFacts.Limit>("Published limits differ, so each says whose it is", "No limits.")
                        .text("Limit", ChamberFacts.Limit::name)
                        .text("Value", ChamberFacts.Limit::value)
                        .text("Whose it is", ChamberFacts.Limit::source)
                        .show(ChamberFacts.limits(chamber.terms()))), materials(chamber));
    }

    private Component materials(Chamber chamber) {
        NativeDetails outside = new NativeDetails("What stays outside, and why",
                list(ChamberFacts.outside(chamber.terms(), chambers.materials())));
        return Forms.panel("What may go into " + chamber.station(),
                list(ChamberFacts.permitted(chamber.terms(), chambers.materials())),
                Forms.note("Whatever is scanned at check-in is judged by the material of its type of supply."),
                outside);
    }

    private static UnorderedList list(List<ChamberFacts.MaterialLine> lines) {
        UnorderedList list = new UnorderedList();
        list.addClassName("gear-materials");
        lines.forEach(line -> {
            Span name = new Span(line.name());
            name.addClassName("gear-state");
            list.add(new ListItem(name, new Span(": " + line.words())));
        });
        return list;
    }

    private boolean mayChange() {
        return desk().holds(Role.LEAD, Role.PROCESS_CONTROL);
    }
}
