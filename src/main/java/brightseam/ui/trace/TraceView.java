package brightseam.ui.trace;

import brightseam.kernel.TravellerId;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanReading;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.TraceQuestion;
import brightseam.trace.Whereabouts;
import brightseam.trace.shell.Traces;
import brightseam.traveller.shell.InspectorActions;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.entry.Frames;
import brightseam.ui.entry.Scans;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Scanned;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;

/** The contact trace: scan or choose a thing or a traveller; the answer; suspicion put and lifted. */
@Route("trace")
@PageTitle("Trace")
@RolesAllowed({"LEAD", "INSPECTOR", "PROCESS_CONTROL"})
@StyleSheet("context://frontend/trace.css")
class TraceView extends DeskPage implements BeforeEnterObserver {

    private final Traces traces;
    private final Travellers travellers;
    private final TravellerActions acting;
    private final InspectorActions inspecting;
    private final People people;
    private final QuestionForm question;
    private final NativeDetails asking;
    private final Div answer = new Div();
    private final Div deeds = new Div();
    private List<Object> shown = List.of();
    private TraceAddress address = new TraceAddress(Optional.empty(), Optional.empty(), Optional.empty());

    TraceView(Desk desk, Frames frames, Traces traces, Travellers travellers, TravellerActions acting,
            InspectorActions inspecting, People people, Changes changes) {
        super(desk, "Trace");
        this.traces = traces;
        this.travellers = travellers;
        this.acting = acting;
        this.inspecting = inspecting;
        this.people = people;
        var scans = frames.scans();
        scans.addScanListener(this::scanned);
        question = new QuestionForm(desk.zone(), address -> told().guarded(() -> {
            go(address.get());
            return Optional.empty();
        }));
        asking = new NativeDetails("Ask without a label: by sort, label, lot, time", question);
        show(new Div(Forms.note("Scan the label of a bin, station, badge, heat, kit, supply or traveller."), scans),
                asking, answer, deeds);
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> stream.family().equals("traveller")) && nothingAsked()) {
                suspects();
            }
        });
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        answer.removeAll();
        deeds.removeAll();
        shown = List.of();
        told().guarded(() -> Optional.of(TraceAddress.read(
                entering.getLocation().getQueryParameters().getParameters(), desk().zone()))).ifPresent(this::answer);
    }

    private void answer(TraceAddress asked) {
        address = asked;
        asking.setOpen(false);
        asked.question().ifPresent(this::thing);
        asked.traveller().ifPresent(id -> pieces(id, asked.piece()));
        if (nothingAsked()) {
            head("Trace", "From a thing to the pieces that it touched, from a piece to what touched it.");
            suspects();
        }
    }

    private boolean nothingAsked() {
        return address.question().isEmpty() && address.traveller().isEmpty();
    }

    private void thing(TraceQuestion asked) {
        head(TraceWords.capital(TraceWords.thing(asked)), time(asked));
        question.show(asked);
        ThingAnswer found = new ThingAnswer(desk(), traces, asked);
        answer.add(lots(asked), found);
        if (!found.reach().travellers().isEmpty() && desk().holds(Role.LEAD, Role.INSPECTOR, Role.PROCESS_CONTROL)) {
            deeds.add(Forms.panel("Put under suspicion", new MarkForm(desk(), told(), traces, travellers, acting,
                    found.reach(), words -> {
                        found.again();
                        told().done("Under suspicion", words);
                    })));
        }
        deeds.add(Links.to("trace", "All that is suspect, and lifting it"));
    }

    private String time(TraceQuestion asked) {
        String from = asked.from().map(at -> "from " + Words.stamp(at, desk().zone())).orElse("");
        String until = asked.until().map(at -> " until " + Words.stamp(at, desk().zone())).orElse("");
        return from.isEmpty() && until.isEmpty() ? "At any time" : "Touched " + (from + until).strip();
    }

    /** The fills that were in a tank, the lots that were under a label: each with an answer of its own. */
    private Component lots(TraceQuestion asked) {
        Div ways = Forms.row();
        ThingKind kind = asked.kind() == ThingKind.STATION ? ThingKind.BATH : asked.kind();
        List<Thing> lots = asked.label().filter(label -> kind.hasLots()).map(label -> traces.lots(kind, label))
                .orElse(List.of());
        boolean others = lots.size() > 1 || asked.kind() == ThingKind.STATION && !lots.isEmpty();
        if (others) {
            ways.add(new Span(kind == ThingKind.BATH ? "By fill:" : "By lot:"));
            lots.stream().limit(12).forEach(lot -> ways.add(Links.to(TraceAddress.of(lot), TraceWords.thing(lot))));
        }
        ways.setVisible(others);
        return ways;
    }

    private void pieces(TravellerId id, Optional<Integer> piece) {
        Optional<Whereabouts> now = traces.find(id);
        head(piece.map(one -> "Piece " + one + " of ").orElse("") + id, now.map(found -> found.part().partNumber()
                + ", " + found.part().description() + ", heat " + found.heat() + ", kit " + found.kit())
                .orElse("No traveller of this shop has that label."));
        now.ifPresent(found -> answer.add(new PieceAnswer(desk(), traces, people, found, piece)));
    }

    /** Forms stay as they are while somebody writes in them, unless who is suspect changed. */
    private void suspects() {
        List<Suspects> all = Suspects.among(traces.suspects().stream()
                .map(travellers::find).flatMap(Optional::stream).toList());
        List<Object> key = List.of(all.stream().map(group -> List.of(group.reason(), group.all().stream()
                .map(one -> List.of(one.id(), one.open(), one.isHolding())).toList())).toList());
        if (key.equals(shown)) {
            return;
        }
        shown = key;
        deeds.removeAll();
        Div list = new Div();
        if (all.isEmpty()) {
            list.add(Forms.note("Nothing is under suspicion. Trace a thing that proved bad, and put what it touched"
                    + " under suspicion there."));
        }
        all.forEach(group -> list.add(new H3(group.reason()), new Paragraph(Words.count(group.all().size(),
                "traveller", "travellers") + ", since " + Words.stamp(group.since().wall(), desk().zone())),
                new LiftForm(desk(), told(), inspecting, group, words -> {
                    suspects();
                    told().done("Decided", words);
                })));
        deeds.add(Forms.panel("Suspects", list));
    }

    private void scanned(Scanned scan) {
        ScanReading reading = Scans.read(scan, desk().now());
        if (!(reading instanceof OwnLabel label)) {
            told().refused("Not our label", "This is not one of the shop's own labels.",
                    "Scan a label of the shop, or ask by sort and lot below.");
            return;
        }
        if (label.traveller().isPresent()) {
            go(TraceAddress.of(label.traveller().get()));
            return;
        }
        QuestionForm.thing(label, traces.labelled(label.id())).ifPresentOrElse(thing -> go(TraceAddress.of(thing)),
                () -> told().refused("No contact", label.id() + " has touched nothing that is in the records.",
                        "Check the label, or ask by its lot."));
    }

    private void go(String path) {
        UI.getCurrent().getPage().setLocation(path);
    }
}
