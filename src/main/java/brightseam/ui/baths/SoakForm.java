package brightseam.ui.baths;

import brightseam.bath.CouponLoss;
import brightseam.bath.Density;
import brightseam.bath.EtchRate;
import brightseam.bath.Removal;
import brightseam.bath.Soak;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Numbers;
import brightseam.ui.desk.Told;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Which soak takes off what is wanted, by a coupon that went through the bath, inside a procedure's hold. */
final class SoakForm extends Div {

    private final TextField grade = Forms.text("Grade of the coupon", "such as 9");
    private final TextField before = Forms.text("Coupon before, g", "clean and dry, such as 12.4310");
    private final TextField after = Forms.text("Coupon after, g", "rinsed and dry");
    private final TextField area = Forms.text("Its surface, cm²", "both faces and the edges");
    private final TextField soaked = Forms.text("It soaked, min", "such as 5");
    private final TextField least = Forms.text("Take off at least, µm", "per surface; your specification says");
    private final TextField most = Forms.text("Take off at most, µm", "per surface; a wall loses it on both sides");
    private final TextField shortest = Forms.text("Hold at least, min", "as the procedure has it");
    private final TextField longest = Forms.text("Hold at most, min", "as the procedure has it");

    SoakForm(Told told) {
        Paragraph answer = new Paragraph();
        answer.addClassName("bath-answer");
        answer.getElement().setAttribute("role", "status");
        add(Forms.row(grade, before, after, area, soaked), Forms.row(least, most, shortest, longest,
                Forms.button("Work it out", () -> told.guarded(() -> {
                    answer.setText(words(coupon(), minutes("It soaked", soaked), hold(), wanted()));
                    return Optional.of(true);
                }))), answer);
    }

    private CouponLoss coupon() {
        return new CouponLoss(Numbers.decimal("mass before", before.getValue()).doubleValue(),
                Numbers.decimal("mass after", after.getValue()).doubleValue(),
                Numbers.decimal("surface", area.getValue()).doubleValue(), Density.ofGrade(grade.getValue().strip())
                        .orElseThrow(() -> new IllegalArgumentException("no density is known for that grade")));
    }

    private List<Duration> hold() {
        return List.of(minutes("hold at least", shortest), minutes("hold at most", longest));
    }

    private Soak.Wanted wanted() {
        return new Soak.Wanted(new Removal(Numbers.decimal("at least", least.getValue()).doubleValue()),
                Optional.of(new Removal(Numbers.decimal("at most", most.getValue()).doubleValue())));
    }

    private static Duration minutes(String name, TextField field) {
        return Duration.ofMillis(Numbers.decimal(name, field.getValue()).multiply(BigDecimal.valueOf(60_000))
                .longValue());
    }

    /** The answer as a sentence; {@code hold} is minimum and maximum. */
    static String words(CouponLoss coupon, Duration soaked, List<Duration> hold, Soak.Wanted wanted) {
        EtchRate rate = coupon.rate(soaked);
        String found = "The coupon lost " + plain(coupon.removal().micrometres()) + " µm, "
                + plain(rate.micrometresPerMinute()) + " µm/min (" + plain(rate.milPerMinute()) + " mil/min). ";
        return found + switch (Soak.within(hold.getFirst(), Optional.of(hold.getLast()), wanted, rate)) {
            case Soak.Possible soak -> "Soak " + Words.duration(soak.shortest()) + soak.longest()
                    .map(end -> " to " + Words.duration(end)).orElse(" or longer") + "; the shortest takes off "
                    + plain(soak.leastRemoval().micrometres()) + " µm.";
            case Soak.TooSlow slow -> "Too slow: even " + Words.duration(slow.maximum()) + " takes off only "
                    + plain(slow.most().micrometres()) + " µm. Strengthen or renew the bath.";
            case Soak.TooFast fast -> "Too fast: " + Words.duration(fast.minimum()) + " takes off "
                    + plain(fast.least().micrometres()) + " µm already. Cool or dilute the bath.";
            case Soak.NeverEnough never -> "The bath takes off nothing.";
        };
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
}
