package brightseam.ui.weld;

import brightseam.device.shell.Readings;
import brightseam.ui.desk.Desk;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.Drawn;
import brightseam.ui.parts.Mark;
import brightseam.weld.Arc;
import brightseam.weld.ArcSetting;
import brightseam.weld.ColourScale;
import brightseam.weld.GasEvidence;
import brightseam.weld.GasReading;
import brightseam.weld.Joint;
import brightseam.weld.Judgement;
import brightseam.weld.Verdict;
import brightseam.weld.WeldColour;
import brightseam.weld.shell.JointView;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is known of one joint: its plan, each arc with its evidence, each judgement. */
final class JointPanel extends Div {

    private final Desk desk;
    private final Readings readings;
    private final ColourScale scale;

    JointPanel(Desk desk, Readings readings, ColourScale scale, JointView view) {
        this.desk = desk;
        this.readings = readings;
        this.scale = scale;
        addClassName("joint-panel");
        add(new Paragraph(JointWords.plan(view.plan()) + ". By issue " + view.issue() + " of the map."));
        view.joint().ifPresentOrElse(joint -> {
            joint.arcs().forEach(arc -> add(arc(joint, arc)));
            joint.judgements().forEach(judgement -> add(judged(judgement)));
        }, () -> add(new Paragraph("No arc was begun on it yet.")));
    }

    private Div arc(Joint joint, Arc arc) {
        Div block = new Div(new H3(JointWords.purpose(arc.purpose()) + ", run " + arc.run() + ", "
                + Words.stamp(arc.startedAt().wall(), desk.zone())), new Paragraph(setting(arc.setting())));
        block.addClassName("joint-arc");
        if (arc.isRunning()) {
            block.add(new Paragraph("The arc runs."));
            return block;
        }
        block.add(new Paragraph("Arc for " + Words.duration(arc.stoppedAt().orElseThrow().since(arc.startedAt()))
                + "."));
        arc.evidence().ifPresent(evidence -> block.add(evidence("While the arc ran", evidence)));
        arc.cooling().ifPresent(evidence -> block.add(evidence("While it cooled", evidence)));
        block.add(new Chart(Drawn.of(OxygenChart.of(joint, arc, readings, desk.now(), desk.zone()))));
        return block;
    }

    private static String setting(ArcSetting setting) {
        return "By " + setting.welderName() + " in " + setting.session() + " (" + setting.chamber() + "); back side "
                + setting.backSide().name().toLowerCase(Locale.ROOT) + setting.backSideOxygen()
                .flatMap(GasReading::ppm).map(ppm -> " at " + ppm.toPlainString() + " ppm oxygen").orElse("")
                + "; filler " + setting.filler().orElse("none") + "; argon " + setting.argon().source() + ", lot "
                + setting.argon().lot() + "; begun at " + setting.oxygen().ppm().map(ppm -> ppm.toPlainString())
                .orElse("?") + " ppm oxygen" + (setting.simulated() ? "; meters simulated" : "") + ".";
    }

    private Div evidence(String when, GasEvidence evidence) {
        Span word = new Span(new Mark(evidence.clean() ? Mark.Kind.SIGNED : Mark.Kind.STOPPED),
                new Span(when + ": " + EvidenceWords.word(evidence).toLowerCase(Locale.ROOT)));
        word.addClassName("joint-word");
        Div block = new Div(word);
        block.addClassName("joint-evidence");
        EvidenceWords.lines(evidence, desk.zone()).forEach(line -> block.add(new Paragraph(line)));
        return block;
    }

    private Div judged(Judgement judged) {
        boolean accepted = judged.verdict() == Verdict.ACCEPT;
        Span word = new Span(new Mark(accepted ? Mark.Kind.SIGNED : Mark.Kind.REFUSED),
                new Span((accepted ? "Accepted" : "Rejected") + " by " + judged.signer().name()
                        + judged.signer().stamp().map(stamp -> ", stamp " + stamp).orElse("") + ", "
                        + Words.stamp(judged.at().wall(), desk.zone())));
        word.addClassName("joint-word");
        Div block = new Div(word, new Paragraph(seen(judged)));
        block.addClassName("joint-judged");
        judged.findings().forEach(note -> block.add(new Paragraph(
                scale.finding(note.kind()).map(kind -> kind.name()).orElse(note.kind()) + ": " + note.text())));
        judged.next().forEach(next -> block.add(new Paragraph("Next: " + next + ".")));
        judged.useAsIs().ifPresent(why -> block.add(new Paragraph("Use as is, " + why)));
        judged.remark().ifPresent(text -> block.add(new Paragraph("Remark: " + text)));
        Div pictures = new Div();
        pictures.addClassName("judge-photographs");
        judged.photographsSha256().forEach(key -> {
            Anchor whole = new Anchor("picture/" + key, new Image("picture/" + key, "Photograph of the joint"));
            whole.setTarget(AnchorTarget.BLANK);
            whole.getElement().setAttribute("router-ignore", true);
            pictures.add(new Div(whole));
        });
        block.add(pictures);
        return block;
    }

    private String seen(Judgement judged) {
        return judged.colours().onTheWeld().stream().map(this::name).collect(Collectors.joining(", "))
                + judged.colours().bandAtTheEdge().map(band -> "; band at the edge " + name(band)).orElse("")
                + (judged.colours().beforeBrushing() ? "; before brushing" : "; brushed before") + "; "
                + judged.lighting().lux().toPlainString() + " lux by " + judged.lighting().meter() + "; "
                + scale.table(judged.table()).map(table -> table.title()).orElse(judged.table()) + ".";
    }

    private String name(String key) {
        return scale.colour(key).map(WeldColour::name).orElse(key);
    }
}
