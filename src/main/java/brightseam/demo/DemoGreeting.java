package brightseam.demo;

import brightseam.kernel.shell.DemoClock;
import java.util.Locale;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Prints that this is a demo, and whose badges and PINs there are. */
@Component
@ConditionalOnExpression("'${brightseam.shop:empty}' == 'demo' and ${brightseam.greeting:true}")
final class DemoGreeting {

    private final DemoClock clock;

    DemoGreeting(DemoClock clock) {
        this.clock = clock;
    }

    @EventListener
    void ready(ApplicationReadyEvent ready) {
        System.out.println(words(clock.speed()));
    }

    /** The mark and the table. */
    static String words(double speed) {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT,
                "%nDEMO SHOP – invented data, simulated clock ×%s. No part and no person here is real.%n%n",
                speed == Math.rint(speed) ? String.valueOf((long) speed) : String.valueOf(speed)));
        text.append(row("badge", "PIN", "name", "role", "use it for"));
        for (DemoPerson person : DemoPerson.values()) {
            text.append(row(person.badge().value(), person.pin(), person.fullName(),
                    person.role().name().toLowerCase(Locale.ROOT), person.purpose()));
        }
        return text.append("\nSigned in, open /demo: hurry the clock, print the demo's labels.\n").toString();
    }

    private static String row(String badge, String pin, String name, String role, String purpose) {
        return String.format(Locale.ROOT, "  %-7s %-7s %-13s %-14s %s%n", badge, pin, name, role, purpose);
    }
}
