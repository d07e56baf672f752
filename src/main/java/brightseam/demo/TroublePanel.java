package brightseam.demo;

import brightseam.ui.desk.Forms;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Paragraph;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;

/** The part of {@code /demo} from which trouble is made at the simulated chamber. */
@org.springframework.stereotype.Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class TroublePanel {

    /** Flattens the purge above the limit of 30 ppm: some 60 ppm at the purge flow. */
    private static final double LEAK_LITRES_PER_MINUTE = 0.03;
    private static final double WET_PPM = 80;
    /** Some 35 ppm in the demo's chamber. */
    private static final double PUFF_LITRES = 0.2;
    private static final double LAST_BAR = 12;
    private static final Duration INTO_THE_ARC = Duration.ofSeconds(30);
    private static final Duration GAP = Duration.ofSeconds(25);

    private final ChamberTrouble trouble;

    TroublePanel(ChamberTrouble trouble) {
        this.trouble = trouble;
    }

    /** What can go wrong, each as a button; what was done is said under them. */
    Component panel() {
        Paragraph done = new Paragraph("Nothing was done yet.");
        done.addClassName("desk-note");
        done.getElement().setAttribute("role", "status");
        List<Component> content = new ArrayList<>(List.of(new Paragraph("The chamber, its lock, its gas and its"
                + " meters are simulated: they follow what is done on the screens. Make something go wrong, and see"
                + " what the shop makes of it. Skip the clock to get through a purge.")));
        content.add(Forms.row(
                act(done, "Air leaks in, 0.03 L/min", () -> trouble.leak(LEAK_LITRES_PER_MINUTE)),
                act(done, "Wet argon, 80 ppm more", () -> trouble.wetGas(WET_PPM)),
                act(done, "Ventilation stands still", () -> trouble.ventilationOff(true))));
        content.add(Forms.row(
                act(done, "Oxygen analyser frozen", () -> trouble.freeze(ChamberTrouble.OXYGEN)),
                act(done, "Oxygen analyser silent", () -> trouble.silence(ChamberTrouble.OXYGEN)),
                act(done, "Silent for 25 s in the next arc", () -> trouble.gapInNextArc(INTO_THE_ARC, GAP))));
        content.add(Forms.row(
                act(done, "A puff of air now", () -> trouble.puff(PUFF_LITRES)),
                act(done, "A puff of air in the next arc", () -> trouble.puffInNextArc(PUFF_LITRES, INTO_THE_ARC)),
                act(done, "Argon at 12 bar", () -> trouble.nearlyEmpty(LAST_BAR))));
        content.add(Forms.row(Forms.act("Everything works again", () -> {
            trouble.mendAll();
            done.setText("Done: everything works again. Air that came in stays in until it is purged.");
        })));
        content.add(done);
        return Forms.panel("Trouble at the simulated chamber", content.toArray(Component[]::new));
    }

    private static Component act(Paragraph done, String words, Runnable act) {
        return Forms.button(words, () -> {
            act.run();
            done.setText("Done: " + words + ".");
        });
    }
}
