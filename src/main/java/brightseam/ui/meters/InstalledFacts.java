package brightseam.ui.meters;

import brightseam.device.Feed;
import brightseam.device.HealthRule;
import brightseam.device.Meter;
import brightseam.device.MeterRecord;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** How a meter is installed, to be read. */
final class InstalledFacts {

    private InstalledFacts() {}

    /** One thing about it. */
    record Fact(String name, String words) {}

    static Component of(MeterRecord record, Desk desk) {
        return Forms.panel("How it is installed", new DeskTable<Fact>("What is known of it", "")
                .text("What", Fact::name).text("How", Fact::words).show(facts(record, desk.zone())));
    }

    static List<Fact> facts(MeterRecord record, ZoneId zone) {
        Meter meter = record.meter();
        HealthRule health = meter.health();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Measures", MeterWording.quantity(meter.quantity()) + ", "
                + MeterWording.place(meter.place()) + " " + meter.station()));
        facts.add(new Fact("Range", MeterWording.value(meter, meter.rangeLow()) + " to "
                + MeterWording.value(meter, meter.rangeHigh()) + ", in steps of "
                + MeterWording.value(meter, meter.resolution())));
        facts.add(new Fact("Readings", MeterWording.feed(meter.feed())));
        facts.add(new Fact("Response", "to 90 % of a step in " + Words.duration(meter.responseTime())));
        if (!(meter.feed() instanceof Feed.Typed)) {
            facts.add(new Fact("Silent", "once " + Words.count(health.silentAfterReadings(), "reading is",
                    "readings are") + " missing"));
            facts.add(new Fact("Frozen", health.frozenAfter().isZero() ? "never"
                    : "after the very same value for " + Words.duration(health.frozenAfter())));
        }
        record.token().ifPresent(at -> facts.add(new Fact("Token", "made " + Words.stamp(at.wall(), zone))));
        record.outOfUse().ifPresent(why -> facts.add(new Fact("Out of use", why)));
        return facts;
    }
}
