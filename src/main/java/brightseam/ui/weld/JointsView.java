package brightseam.ui.weld;

import brightseam.device.shell.Readings;
import brightseam.kernel.JointId;
import brightseam.kernel.KitId;
import brightseam.ledger.Versioned;
import brightseam.picture.shell.Pictures;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Mark;
import brightseam.weld.ColourScale;
import brightseam.weld.JointStanding;
import brightseam.weld.MapSheet;
import brightseam.weld.WeldMap;
import brightseam.weld.shell.JointView;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.WeldMaps;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The joints of one kit: on its map and as a list; the chosen one with its evidence, to judge. */
@Route("stamp/joints/:kit/:joint?")
@PageTitle("Joints")
@RolesAllowed("INSPECTOR")
@StyleSheet("context://frontend/weld.css")
class JointsView extends DeskPage implements BeforeEnterObserver {

    private static final Set<String> SHOWN = Set.of("joint", "weld-map");

    private final Joints joints;
    private final WeldMaps maps;
    private final Readings readings;
    private final Pictures pictures;
    private final ColourScale scale;
    private final Div overview = new Div();
    private final Div known = new Div();
    private final Div form = new Div();
    private Optional<KitId> kit = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private Optional<JointStanding> offered = Optional.empty();

    JointsView(Desk desk, Joints joints, WeldMaps maps, Readings readings, Pictures pictures, ColourScale scale,
            Changes changes) {
        super(desk, "Joints");
        this.joints = joints;
        this.maps = maps;
        this.readings = readings;
        this.pictures = pictures;
        this.scale = scale;
        overview.addClassName("weld-overview");
        show(overview, known, form);
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> SHOWN.contains(stream.family()))) {
                refresh();
            }
        });
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        kit = label(entering, "kit", KitId::new);
        chosen = entering.getRouteParameters().get("joint");
        offered = Optional.empty();
        form.removeAll();
        refresh();
    }

    private void refresh() {
        List<JointView> all = kit.map(joints::ofKit).orElse(List.of());
        overview.removeAll();
        known.removeAll();
        if (all.isEmpty()) {
            head("No joints", "The weld map of this kit was not issued yet. A lead issues it on the kit's page.");
            overview.add(Links.to("stamp/joints", "All kits with joints"));
            return;
        }
        head("Joints of " + kit.orElseThrow(), JointWords.counts(all) + ".");
        overview.add(map(all), list(all));
        all.stream().filter(view -> chosen.filter(view.id().number()::equals).isPresent()).findFirst()
                .ifPresent(this::open);
    }

    private Component map(List<JointView> all) {
        Optional<MapSheet> sheet = maps.find(kit.orElseThrow()).map(Versioned::state).flatMap(WeldMap::current)
                .map(WeldMap.Issue::sheet);
        return sheet.flatMap(MapSheet::pictureSha256).<Component>map(key -> {
            MapFigure figure = new MapFigure(key, sheet.orElseThrow().drawing());
            all.forEach(view -> view.plan().spot().ifPresent(spot -> figure.mark(view.id().number(), spot,
                    JointWords.mark(view), chosen.filter(view.id().number()::equals).isPresent())));
            return figure;
        }).orElseGet(() -> Forms.note("This map has no picture."));
    }

    private UnorderedList list(List<JointView> all) {
        UnorderedList list = new UnorderedList();
        list.addClassName("weld-list");
        all.forEach(view -> {
            Anchor link = Links.to("stamp/joints/" + kit.orElseThrow() + "/" + view.id().number(), "");
            Span number = new Span(view.id().number());
            number.addClassName("weld-number");
            Span words = new Span(view.plan().description());
            words.addClassName("weld-words");
            Span state = new Span(JointWords.standing(view));
            state.addClassName("weld-state");
            link.add(new Mark(JointWords.mark(view)), number, words, state);
            if (chosen.filter(view.id().number()::equals).isPresent()) {
                link.getElement().setAttribute("aria-current", "true");
            }
            list.add(new ListItem(link));
        });
        return list;
    }

    private void open(JointView view) {
        JointId id = view.id();
        known.add(Forms.panel(id.number() + " " + view.plan().description() + ": " + JointWords.standing(view),
                new JointPanel(desk(), readings, scale, view)));
        JointStanding standing = view.standing();
        if (offered.equals(Optional.of(standing))) {
            return;
        }
        offered = Optional.of(standing);
        form.removeAll();
        if (standing == JointStanding.WELDED) {
            form.add(Forms.panel("Judge " + id.number(), judging(view)));
        } else if (standing == JointStanding.REJECTED) {
            form.add(Forms.panel("After the rejection", new NativeDetails("Judge it again, once its nonconformance is"
                    + " dispositioned to use it as is", judging(view))));
        }
    }

    private JudgeForm judging(JointView view) {
        return new JudgeForm(desk(), told(), joints, pictures, scale, view, this::refresh);
    }
}
