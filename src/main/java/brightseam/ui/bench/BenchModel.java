package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.line.Station;
import brightseam.people.shell.Tablet;
import brightseam.procedure.BinClass;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.procedure.Use;
import brightseam.supply.Supply;
import brightseam.traveller.Guide;
import brightseam.traveller.NextAction;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.Uses;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What one tablet's bench shows now. What is open is kept in the database; what is half said (a confirmed caution, a
 * report being made) is kept here and falls away when the card moves on.
 */
final class BenchModel {

    private final BenchServices services;
    private final Actor actor;
    private final CardWriter writer;
    private Optional<Load> load = Optional.empty();
    private Optional<Side> side = Optional.empty();
    private Optional<Begun> readyFor = Optional.empty();
    private MadeReady ready = MadeReady.NOTHING;
    private Optional<StepId> hurriedOn = Optional.empty();
    private Optional<BinId> refusedBin = Optional.empty();

    /** One passage of a load through a step that may begin. */
    private record Begun(List<TravellerId> ids, StepId step, int pass) {}

    BenchModel(BenchServices services, Actor actor, ZoneId zone) {
        this.services = services;
        this.actor = actor;
        this.writer = new CardWriter(services.vocabulary(), zone);
    }

    /** Reads anew what is open on this tablet. */
    void refresh() {
        List<TravellerId> before = ids();
        Optional<Step> step = next().flatMap(Load::stepOf);
        load = services.cards().on(actor.tablet());
        boolean moved = !before.equals(ids()) || !step.equals(next().flatMap(Load::stepOf));
        if (moved) {
            side = Optional.empty();
            refusedBin = Optional.empty();
        }
        if (hurriedOn.isPresent() && !isStillHurried()) {
            hurriedOn = Optional.empty();
        }
    }

    /** The card, where one is open. */
    Optional<BenchCard> card() {
        Moment now = services.clock().now();
        return load.map(open -> writer.write(open, next().orElseThrow(), ready(), now));
    }

    /** What is worked on, where something is open. */
    Optional<Load> load() {
        return load;
    }

    /** The labels of what is worked on; none where nothing is open. */
    List<TravellerId> ids() {
        return load.map(Load::ids).orElse(List.of());
    }

    /**
     * What was scanned to open the card: the traveller alone where its own label was, though it shares its basket; else
     * everything that is worked on.
     */
    List<TravellerId> scanned() {
        return load.filter(open -> ids().size() > 1).map(Load::label)
                .filter(label -> ids().stream().anyMatch(id -> id.value().equals(label)))
                .map(label -> List.of(new TravellerId(label))).orElse(ids());
    }

    /** Whether the load lies in a process basket, so that pieces can be taken out of it. */
    boolean isInBasket() {
        return load.flatMap(open -> open.first().traveller().placement())
                .filter(place -> place.binClass() == BinClass.PROCESS_BASKET).isPresent();
    }

    /** Whether a hold runs on the load. */
    boolean isHeld() {
        return next().filter(NextAction.Holding.class::isInstance).isPresent();
    }

    /** The one thing to do now: what the guide says, or the next step where somebody hurried on. */
    Optional<NextAction> next() {
        return load.map(open -> hurriedOn.<NextAction>map(step -> new NextAction.Begin(open.step(step), open.gap()))
                .orElseGet(open::next));
    }

    /** The step that a scanned station would begin: the one at hand, or the one behind a running gap. */
    Optional<Step> startable() {
        return next().flatMap(next -> next instanceof NextAction.Begin begin ? Optional.of(begin.step())
                : load.flatMap(BenchModel::hurried));
    }

    /** The moment on the shop's clock. */
    Moment now() {
        return services.clock().now();
    }

    /** Whether the step that begins next is one that may be entered after it was done, and everything is ready. */
    boolean mayEnterLate() {
        return load.isPresent() && next().filter(NextAction.Begin.class::isInstance).isPresent()
                && startable().filter(step -> Guide.mayBeLate(load.get().first().procedure(), step)
                        && step.signedBy() == SignedBy.FABRICATOR
                        && (step.cautions().isEmpty() && step.gloves().isEmpty() || ready().glovesOn())
                        && ready().missing(asked()).isEmpty()).isPresent();
    }

    /** The stations at which the step that begins next can be done. */
    List<StationId> stationsToBegin() {
        return startable().map(Step::station).stream().flatMap(asked -> services.stations().all().stream()
                .filter(station -> station.stationClass().equals(asked) && !station.isOutOfUse())
                .map(Station::id)).sorted().toList();
    }

    /** What stands in front of the card. */
    Optional<Side> side() {
        return side;
    }

    /** Puts something in front of the card, or takes it away. */
    void side(Optional<Side> next) {
        side = next;
    }

    /** The cautions are read and the gloves are on, for the step that begins next. */
    void confirm() {
        make(ready().confirm());
    }

    /** {@code supply} is at hand, for the step that begins next. */
    void tick(Supply supply) {
        make(ready().with(supply));
    }

    /** What is ready for the step that begins next; nothing once the card has moved on. */
    MadeReady ready() {
        return readyFor.isPresent() && readyFor.equals(begun()) ? ready : MadeReady.NOTHING;
    }

    private void make(MadeReady next) {
        readyFor = begun();
        ready = next;
    }

    /** What is to be scanned before the step begins that begins next. */
    List<Use> asked() {
        return load.flatMap(open -> startable().map(open::asked)).orElse(List.of());
    }

    /** Whether cleaned pieces are handled now or next, in gloves that are not known to be spent. */
    boolean isInCleanGloves() {
        return load.map(Load::first).filter(card -> !card.traveller().glovesSpent())
                .flatMap(card -> Uses.inHand(card.traveller(), card.procedure()).or(this::startable)
                        .flatMap(step -> Uses.gloves(card.procedure(), step))).isPresent();
    }

    /** Whether new gloves are to be scanned in the middle of a step. */
    boolean needsNewGloves() {
        return card().flatMap(BenchCard::gloves).isPresent();
    }

    /** Shows the step behind the running gap, leaving the one before it to be signed later. */
    void hurryOn() {
        hurriedOn = load.flatMap(BenchModel::hurried).map(Step::id);
    }

    /** Opens what {@code label} names; empty where there is nothing. */
    Optional<Load> open(String label) {
        Optional<Load> found = services.cards().load(label);
        found.ifPresent(open -> {
            services.cards().take(open, actor.tablet());
            hurriedOn = Optional.empty();
            refresh();
        });
        return found;
    }

    /** Puts the card away; the work goes on where it is. */
    void close() {
        services.tablets().closeCard(actor.tablet());
        hurriedOn = Optional.empty();
        refresh();
    }

    /** Whether what is shown is still open on this tablet; false once it moved to another one. */
    boolean isAsSeen() {
        return load.map(Load::label).equals(services.tablets().find(actor.tablet()).flatMap(Tablet::openCard));
    }

    /** Whether a touch would end something. */
    boolean isTouchable() {
        return load.filter(open -> open.first().traveller().window() instanceof Window.Open).isPresent();
    }

    /** The passage that is being worked in, where one has begun. */
    Optional<StepRun> run() {
        return load.flatMap(open -> next().flatMap(Load::stepOf)
                .flatMap(step -> open.first().traveller().run(step.id())));
    }

    /** The readings of the passage at hand that the person took and may correct. */
    List<ReadingSpec> correctable() {
        return run().map(run -> next().flatMap(Load::stepOf).orElseThrow().readings().stream()
                .filter(spec -> run.reading(spec.id()).filter(read -> read.by().equals(actor.badge())).isPresent())
                .toList()).orElse(List.of());
    }

    /** The bin that may be opened: theirs, where it is closed; or the one that was refused for being closed. */
    Optional<BinId> closedBin() {
        return refusedBin.or(() -> load.flatMap(open -> open.first().traveller().placement())
                .filter(Placement::closed).map(Placement::bin));
    }

    /** Remembers a closed bin that something was to be put into. */
    void closedBin(Optional<BinId> bin) {
        refusedBin = bin;
    }

    private Optional<Begun> begun() {
        return load.flatMap(open -> startable().map(step ->
                new Begun(open.ids(), step.id(), open.first().traveller().pass(step.id()))));
    }

    private boolean isStillHurried() {
        return load.flatMap(BenchModel::hurried).map(Step::id).equals(hurriedOn);
    }

    private static Optional<Step> hurried(Load load) {
        return load.gap().filter(gap -> load.first().traveller().run(gap.to()).isEmpty())
                .map(gap -> load.step(gap.to()));
    }
}
