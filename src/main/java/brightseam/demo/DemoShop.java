package brightseam.demo;

import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.ledger.shell.LastEntries;
import brightseam.ledger.shell.Lead;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Gives a demo shop whose ledger is empty its people, things and past, before the first page is served. What was
 * recorded once is kept: a later start adds nothing. With {@code brightseam.demo-past=false} it begins with people and
 * things alone.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoShop implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(DemoShop.class);
    /** How long before the end the parts of the past begin; each lasts shorter than to the next. */
    private static final Duration TRAVELLERS_BEGIN = Duration.ofHours(31);
    private static final Duration SECOND_DAY = Duration.ofHours(17);
    private static final Duration WINDOW_OPENS = Duration.ofMinutes(138);
    private static final Duration WET_LINE = Duration.ofMinutes(34);

    private final LastEntries ledger;
    private final Registers registers;
    private final BathPast baths;
    private final DemoSupplies supplies;
    private final ChamberGear chamber;
    private final Yesterday yesterday;
    private final Today today;
    private final Now now;
    private final Story story;
    private final Travellers travellers;
    private final DemoClock clock;
    private final boolean withPast;
    private final Lead lead;
    private boolean running;

    DemoShop(LastEntries ledger, Registers registers, BathPast baths, DemoSupplies supplies, ChamberGear chamber,
            Yesterday yesterday, Today today, Now now, Story story, Travellers travellers, DemoClock clock, Lead lead,
            @Value("${brightseam.demo-past:true}") boolean withPast) {
        this.ledger = ledger;
        this.registers = registers;
        this.baths = baths;
        this.supplies = supplies;
        this.chamber = chamber;
        this.yesterday = yesterday;
        this.today = today;
        this.now = now;
        this.story = story;
        this.travellers = travellers;
        this.clock = clock;
        this.withPast = withPast;
        this.lead = lead;
    }

    @Override
    public void start() {
        running = true;
        if (ledger.last(1).isEmpty() && lead.isLead()) {
            double speed = clock.speed();
            clock.setSpeed(1);
            play();
            clock.setSpeed(speed);
        }
    }

    private void play() {
        Moment end = clock.now().plus(DemoClock.HEAD_START);
        registers.fill();
        baths.play();
        until(end, TRAVELLERS_BEGIN);
        supplies.fill();
        chamber.fill();
        if (withPast) {
            playPast(end);
        } else {
            story.passUntil(end);
        }
    }

    private void playPast(Moment end) {
        yesterday.play();
        until(end, SECOND_DAY);
        today.play();
        List<TravellerId> ballast = now.prepare();
        until(end, WINDOW_OPENS);
        today.openWindow(rods());
        until(end, WET_LINE);
        now.play(ballast);
    }

    private TravellerId rods() {
        return travellers.ofKit(Today.MIXED).stream()
                .filter(card -> card.procedure().ref().id().equals("FILLER")).findFirst().orElseThrow().id();
    }

    private void until(Moment end, Duration before) {
        Duration left = end.since(clock.now()).minus(before);
        LOG.debug("the demo's past has {} to spare", left);
        story.pass(left);
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    /** Before the web server, which starts near the last phase. */
    @Override
    public int getPhase() {
        return 0;
    }
}
