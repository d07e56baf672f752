package brightseam.ui.bench;

import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.ui.parts.CautionList;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.Mark;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Draws what the card asks for; answers its actions, the main one first. */
final class DoingFaces {

    private final Bench bench;
    private final HoldFace holds;
    private final String notice;

    DoingFaces(Bench bench, HoldFace holds, String notice) {
        this.bench = bench;
        this.holds = holds;
        this.notice = notice;
    }

    List<Component> draw(WorkCard card, Doing doing) {
        return switch (doing) {
            case Doing.PutInto put -> ask(card, put.ask());
            case Doing.Close close -> {
                ask(card, close.ask());
                yield List.of(bench.main(close.done(), () -> bench.deeds().close(close.bin())));
            }
            case Doing.Start start -> start(card, start);
            case Doing.Reading reading -> reading(card, reading);
            case Doing.BeginHold begin -> {
                ask(card, begin.ask());
                yield List.of(bench.main(begin.done(),
                        () -> bench.deeds().beginHold(bench.model().ids(), step())));
            }
            case Doing.Holding holding -> holds.draw(card, holding, bench,
                    () -> bench.deeds().endHold(bench.model().ids(), step()));
            case Doing.Sign sign -> sign(card, sign);
            case Doing.Wait wait -> {
                card.add(Texts.words("ask", wait.word()), Texts.lines(wait.lines()));
                yield List.of();
            }
        };
    }

    private List<Component> start(WorkCard card, Doing.Start start) {
        if (start.confirm().isPresent()) {
            card.add(CautionList.of(start.cautions(), notice));
            return List.of(bench.mainWay(start.confirm().get(), () -> bench.model().confirm()));
        }
        ask(card, start.ask());
        if (!start.scans().isEmpty()) {
            card.add(scans(start.scans()));
        }
        if (!start.needs().isEmpty()) {
            card.add(Texts.words("needs", "At hand: " + String.join("; ", start.needs()) + "."));
        }
        return List.of();
    }

    /** What is to be scanned, each with a tick and its lot once it is. */
    private static UnorderedList scans(List<Doing.Scan> scans) {
        UnorderedList list = new UnorderedList();
        list.addClassName("scans");
        scans.forEach(scan -> {
            Span lot = new Span(scan.ticked().orElse("scan its label"));
            lot.addClassName("scan-lot");
            ListItem item = new ListItem(new Mark(scan.ticked().isPresent() ? Mark.Kind.SIGNED : Mark.Kind.SCAN),
                    new Span(scan.name()), lot);
            item.getElement().getClassList().set("ticked", scan.ticked().isPresent());
            list.add(item);
        });
        return list;
    }

    private List<Component> reading(WorkCard card, Doing.Reading reading) {
        ReadingSpec spec = reading.spec();
        reading.again().ifPresent(words -> card.add(Texts.words("again", words)));
        KeyPad pad = pad(reading);
        pad.addEnteredListener(entered -> bench.touched().does(() -> entered(spec, reading, entered.value())));
        card.add(Texts.beside(pad));
        return List.of();
    }

    static KeyPad pad(Doing.Reading reading) {
        ReadingSpec spec = reading.spec();
        boolean signed = spec.limits().minimum().filter(low -> low.signum() < 0).isPresent();
        return spec.isPassFail() ? KeyPad.passFail(spec.label(), "Look at every piece.")
                : KeyPad.reading(spec.label(), reading.unit(), "In order: " + reading.limits(), spec.decimals(),
                        signed);
    }

    private Verdict entered(ReadingSpec spec, Doing.Reading reading, String text) {
        Optional<BigDecimal> value = number(text);
        if (value.isEmpty()) {
            return bench.deeds().refuse(bench.model().ids(), "take reading", new BenchRefusal.NoNumber(text));
        }
        if (!spec.limits().admits(value.get())) {
            bench.model().side(Optional.of(new Side.Doubting(spec, value.get())));
            return new Verdict.Silent();
        }
        return bench.deeds().read(bench.model().ids(), step().id(), spec.id(), value.get(), spec.label() + ": "
                + said(spec, value.get(), reading.unit()));
    }

    static String said(ReadingSpec spec, BigDecimal value, String unit) {
        return spec.isPassFail() ? value.signum() > 0 ? "in order" : "not in order"
                : brightseam.words.Words.quantity(value, unit);
    }

    static Optional<BigDecimal> number(String text) {
        try {
            return text.length() > 12 ? Optional.empty() : Optional.of(new BigDecimal(text));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    private List<Component> sign(WorkCard card, Doing.Sign sign) {
        card.add(Texts.words("ask", "You sign:"), Texts.lines(sign.lines()),
                Texts.words("meaning", "“" + sign.meaning() + "”"));
        KeyPad pad = KeyPad.pin("Your PIN signs", 4);
        pad.addEnteredListener(entered -> bench.touched().does(
                () -> bench.deeds().sign(bench.model().ids(), step(), entered.value())));
        card.add(Texts.beside(pad));
        return List.of();
    }

    private Step step() {
        return bench.model().next().flatMap(Load::stepOf).orElseThrow();
    }

    private List<Component> ask(WorkCard card, String what) {
        card.add(Texts.ask(what));
        return List.of();
    }
}
