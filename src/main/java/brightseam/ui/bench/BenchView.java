package brightseam.ui.bench;

import brightseam.kernel.LabelEntry;
import brightseam.lineplan.shell.LinePlan;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.ui.entry.Frames;
import brightseam.ui.entry.Scans;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.ScanInput;
import brightseam.ui.parts.Scanned;
import brightseam.ui.parts.ScreenFrame;
import brightseam.ui.parts.Verdict;
import brightseam.ui.plan.NextByPlan;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The fabricator's screen: one card, one thing to do, scans at any moment. */
@Route("bench")
@PageTitle("Bench")
@RolesAllowed("FABRICATOR")
@StyleSheet("context://frontend/bench.css")
class BenchView extends Composite<ScreenFrame> implements Bench.Touched {

    private final BenchServices services;
    private final SignIn signIn;
    private final Frames frames;
    private final Actor actor;
    private final BenchModel model;
    private final BenchScans scans;
    private final BenchScreen screen;

    BenchView(BenchServices services, SignIn signIn, Frames frames, Changes changes, LinePlan plans) {
        this.services = services;
        this.signIn = signIn;
        this.frames = frames;
        SignedInPerson here = signIn.here().orElseThrow();
        actor = new Actor(here.badge(), here.tablet());
        model = new BenchModel(services, actor, ZoneId.systemDefault());
        Deeds deeds = new Deeds(services, actor,
                () -> model.load().map(Load::together).orElse(List.of()));
        scans = new BenchScans(services, model, deeds, actor);
        screen = new BenchScreen(services, new Bench(model, deeds, this), actor);
        ScanInput input = frames.scans();
        input.addScanListener(this::scanned);
        Div page = new Div(screen, new NextByPlan(plans, services.clock(), actor.badge()), input);
        page.addClassName("bench");
        getContent().add(page);
        changes.follow(this, streams -> {
            services.live().catchUp(streams);
            stored();
        });
        followMoves();
        model.refresh();
        screen.show();
    }

    @Override
    protected ScreenFrame initContent() {
        return frames.make();
    }

    @Override
    public void does(Supplier<Verdict> deed) {
        Verdict verdict = model.isAsSeen() ? deed.get() : movedOn();
        model.refresh();
        screen.show();
        tell(verdict);
    }

    @Override
    public void shows(Runnable change) {
        change.run();
        model.refresh();
        screen.clear();
        screen.show();
    }

    private void scanned(Scanned scan) {
        LabelEntry entry = switch (scan.source()) {
            case WEDGE -> LabelEntry.SCANNED;
            case CAMERA -> LabelEntry.CAMERA;
            case TYPED -> LabelEntry.TYPED;
        };
        Verdict verdict = scans.scan(Scans.read(scan, services.clock().now()), entry);
        model.refresh();
        screen.show();
        tell(verdict);
    }

    private void tell(Verdict verdict) {
        switch (verdict) {
            case Verdict.Accepted accepted -> screen.accepted(accepted);
            case Verdict.Refused refused -> screen.refused(refused);
            case Verdict.Silent silent -> screen.clear();
            case Verdict.HandOver to -> {
                signIn.signOut();
                getUI().ifPresent(ui -> ui.getPage().setLocation("sign-in?badge=" + to.badge()));
            }
        }
    }

    /** Something was stored somewhere: shows what holds now, and says who did it. */
    private void stored() {
        List<Card> before = model.load().map(Load::together).orElse(List.of());
        model.refresh();
        screen.show();
        if (!model.ids().isEmpty()) {
            before.stream().map(this::news).flatMap(Optional::stream).findFirst().ifPresent(this::tell);
        }
    }

    private Optional<Verdict> news(Card seen) {
        boolean grown = model.load().stream().flatMap(open -> open.together().stream())
                .anyMatch(card -> card.id().equals(seen.id()) && card.version() > seen.version());
        List<RecordedEvent> news = grown ? services.travellers().record(seen.id()).stream()
                .filter(recorded -> recorded.entry().version() > seen.version()).toList() : List.of();
        return Elsewhere.told(news, actor.tablet(), services.people()::find);
    }

    private Verdict movedOn() {
        return Verdict.refused(services.wording(), List.of(new BenchRefusal.NoCardOpen()));
    }

    private void followMoves() {
        addAttachListener(attached -> {
            Runnable following = services.cards().follow(actor.tablet(), to ->
                    attached.getUI().access(() -> moved(to)));
            addDetachListener(detached -> {
                detached.unregisterListener();
                following.run();
            });
        });
    }

    private void moved(String to) {
        model.refresh();
        screen.show();
        screen.refused(new Verdict.Refused("Card moved", "This card is open on " + to + " now; nothing was lost.",
                "Work on there, or scan the traveller to take it back."));
    }
}
