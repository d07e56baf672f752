package brightseam.ui.gear;

import brightseam.chamber.ArgonFlows;
import brightseam.chamber.ChamberLimits;
import brightseam.chamber.ChamberTerms;
import brightseam.chamber.CitedLimit;
import brightseam.chamber.Manifold;
import brightseam.chamber.Material;
import brightseam.chamber.Materials;
import brightseam.chamber.UsualSession;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Everything about a chamber that can be set. */
final class TermsFields extends Div {

    private final Field volume = new Field("Inside, L", "without lock and glove ports");
    private final Field ports = new Field("Glove ports, L", "all of them together");
    private final LockFields lock;
    private final Field purge = new Field("Flow to purge, L/min", "at the chamber's own pressure and temperature");
    private final Field hold = new Field("Flow to hold, L/min", "while it is fit");
    private final Field lockFlow = new Field("Flow in the lock, L/min", "while the lock is purged");
    private final Field celsius = new Field("Gas temperature, °C", "in the chamber, as usual");
    private final CitedField weld = new CitedField("Oxygen to weld, at most ppm");
    private final CitedField excursion = new CitedField("Oxygen that is an excursion, ppm");
    private final CitedField moisture = new CitedField("Moisture to weld, at most ppm");
    private final Field dwell = new Field("Inside limits before it is fit, s", "0 where it is fit at once");
    private final Field gap = new Field("Longest gap during an arc, s", "without a usable reading");
    private final Field typed = new Field("Readings typed every, s", "where a meter has no feed");
    private final TextField times = source("Whose these times are");
    private final Field places = new Field("Sources at once", "on the manifold");
    private final Field rest = new Field("Stays in a cylinder, bar", "never drawn, so that no air gets in");
    private final Field retire = new Field("Not connected below, bar",
            "some fabricators: 69, because moisture rises; may stay empty");
    private final Field level = new Field("Stays in a dewar, %", "of a full one");
    private final TextField rests = source("Whose these rests are");
    private final Field fit = new Field("A session is held fit for, h", "as usual: welding, cooling, waiting");
    private final Field passes = new Field("Lock passes in a session", "as usual");
    private final CheckboxGroup<Material> materials = new CheckboxGroup<>("May go in");

    TermsFields(Optional<ChamberTerms> now, LockFields lock, Materials table) {
        this.lock = lock;
        addClassName("gear-terms");
        materials.setItems(table.all().stream().filter(Material::mayBePermitted).toList());
        materials.setItemLabelGenerator(Material::name);
        add(new H3("Volumes"), Forms.row(volume, ports), new H3("Transfer lock"), lock,
                new H3("Argon flows"), Forms.row(purge, hold, lockFlow, celsius),
                new H3("Limits, each with its source"), weld, excursion, moisture,
                new H3("Times"), Forms.row(dwell, gap, typed), Forms.row(times),
                new H3("Manifold"), Forms.row(places, rest, retire, level), Forms.row(rests),
                new H3("A usual session, for forecasts"), Forms.row(fit, passes),
                new H3("Materials"), Forms.note("What reacts with titanium or gives off much gas cannot be permitted"
                        + " and is not offered."), materials);
        now.ifPresent(terms -> fill(terms, table));
    }

    /**
     * The terms as keyed.
     *
     * @throws IllegalArgumentException naming the field that has a wrong form
     */
    ChamberTerms terms() {
        Set<String> keys = materials.getValue().stream().map(Material::key).collect(Collectors.toSet());
        return new ChamberTerms(volume.number(), ports.number(), lock.gear(),
                new ArgonFlows(purge.number(), hold.number(), lockFlow.number(), celsius.number()),
                new ChamberLimits(weld.limit(), excursion.limit(), moisture.limit(), dwell.seconds(), gap.seconds(),
                        typed.seconds(), times.getValue()),
                new Manifold(places.whole(), rest.number(), Numbers.optional(retire.getLabel(), retire.getValue()),
                        level.number(), rests.getValue()),
                new UsualSession(Duration.ofSeconds(fit.number().multiply(new BigDecimal("3600")).longValue()),
                        passes.whole()), new TreeSet<>(keys));
    }

    private void fill(ChamberTerms terms, Materials table) {
        volume.show(terms.volumeLitres());
        ports.show(terms.glovePortLitres());
        lock.fill(terms.lock());
        purge.show(terms.flows().purgeLitresPerMinute());
        hold.show(terms.flows().holdLitresPerMinute());
        lockFlow.show(terms.flows().lockLitresPerMinute());
        celsius.show(terms.flows().temperatureCelsius());
        weld.fill(terms.limits().oxygenPpmToWeld());
        excursion.fill(terms.limits().oxygenPpmExcursion());
        moisture.fill(terms.limits().moisturePpm());
        dwell.show(terms.limits().dwell());
        gap.show(terms.limits().longestGap());
        typed.show(terms.limits().typedEvery());
        times.setValue(terms.limits().timesSource());
        places.setValue(String.valueOf(terms.manifold().sourcesAtOnce()));
        rest.show(terms.manifold().restPressureBarGauge());
        terms.manifold().retirePressureBarGauge().ifPresent(retire::show);
        level.show(terms.manifold().restLevelPercent());
        rests.setValue(terms.manifold().source());
        fit.setValue(String.valueOf(terms.usual().fit().toMinutes() / 60.0));
        passes.setValue(String.valueOf(terms.usual().lockPasses()));
        materials.setValue(terms.permittedMaterials().stream().flatMap(key -> table.find(key).stream())
                .collect(Collectors.toSet()));
    }

    private static TextField source(String label) {
        TextField field = Forms.text(label, "standard and clause, drawing, or common practice");
        field.setMaxLength(200);
        field.addClassName("gear-source");
        return field;
    }

    /** A field for one number. */
    static final class Field extends TextField {
        Field(String label, String help) {
            super(label);
            setHelperText(help);
        }

        BigDecimal number() {
            return Numbers.decimal(getLabel(), getValue());
        }

        int whole() {
            return Numbers.whole(getLabel(), getValue());
        }

        Duration seconds() {
            return Duration.ofMillis(number().movePointRight(3).longValue());
        }

        void show(BigDecimal value) {
            setValue(value.toPlainString());
        }

        void show(Duration time) {
            show(BigDecimal.valueOf(time.toMillis()).movePointLeft(3).stripTrailingZeros());
        }
    }

    /** A limit and whose it is, side by side. */
    static final class CitedField extends Div {
        private final Field value;
        private final TextField source = source("Whose limit that is");

        CitedField(String label) {
            value = new Field(label, "");
            source.setAriaLabel("Whose limit that is: " + label);
            addClassName("desk-row");
            add(value, source);
        }

        CitedLimit limit() {
            return new CitedLimit(value.number(), source.getValue());
        }

        void fill(CitedLimit limit) {
            value.show(limit.value());
            source.setValue(limit.source());
        }
    }
}
