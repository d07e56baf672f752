package brightseam.ui.bench;

import brightseam.kernel.TravellerId;
import brightseam.procedure.ReadingSpec;
import brightseam.procedure.Step;
import brightseam.traveller.shell.Card;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.TextPad;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Draws what stands in front of the card: a touch, a problem, a correction, a bin to open, a value in doubt. */
final class SideFaces {

    private static final List<String> TOUCHES =
            List.of("Bare hand", "Dirty glove or cloth", "Steel tool or bench", "Floor");
    private static final List<String> ON_GLOVES =
            List.of("Tool or bench", "Face or hair", "Tablet", "Oil or dirt");
    private static final List<String> PROBLEMS = List.of("Dent or scratch", "Heat colour", "Stain or spot",
            "Wrong size", "Heat mark missing", "Piece missing");
    private static final List<String> DANGERS = List.of("Fumes or a splash", "Alarm: everybody out",
            "Bath boils or foams", "Wrong bath or wrong basket");
    private static final List<String> SLIPS = List.of("Keyed wrong", "Read on the wrong meter", "Wrong unit");
    /** More buttons than these cannot be told apart on one screen. */
    static final int PIECES_SHOWN_MAX = 40;
    private static final int WORDS_MAX = 120;

    private final Bench bench;
    private final DoingWriter writer;

    SideFaces(Bench bench, DoingWriter writer) {
        this.bench = bench;
        this.writer = writer;
    }

    void draw(WorkCard card, Side side) {
        switch (side) {
            case Side.Touching touching -> touching(card);
            case Side.GlovesTouched gloves -> gloves(card);
            case Side.Reporting reporting -> reporting(card, reporting);
            case Side.Correcting correcting -> correcting(card, correcting);
            case Side.CuttingShort cutting -> cuttingShort(card);
            case Side.TakingOut taking -> new LoadFaces(bench).taking(card, taking);
            case Side.Moving moving -> new LoadFaces(bench).moving(card, moving);
            case Side.EnteringLate late -> new LateFaces(bench).draw(card, late);
            case Side.OpeningBin opening -> opening(card);
            case Side.Doubting doubting -> doubting(card, doubting);
        }
    }

    private void touching(WorkCard card) {
        card.head("Clean window", "What touched it?");
        card.instruction("The pieces go back to be cleaned again. A touch that is not told is found in the weld.");
        card.add(Texts.choices(TOUCHES.stream().<Component>map(what -> bench.main(what,
                () -> done(bench.deeds().touch(bench.model().ids(), what)))).toList()));
        card.actions(back());
    }

    private void gloves(WorkCard card) {
        card.head("Gloves", "What did they touch?");
        card.instruction("Only where the pieces were not touched since. The pieces stay clean; the gloves come off.");
        card.add(Texts.choices(ON_GLOVES.stream().<Component>map(what -> bench.main(what,
                () -> done(bench.deeds().glovesSpent(bench.model().ids(), what)))).toList()));
        card.actions(back());
    }

    private void cuttingShort(WorkCard card) {
        card.head("The minimum is not kept", "Why do they come out now?");
        card.instruction("People first. The step does not count like this; the pieces wait in quarantine.");
        card.add(Texts.choices(DANGERS.stream().<Component>map(why -> bench.main(why,
                () -> done(bench.deeds().cutShort(bench.model().ids(), step(), why)))).toList()));
        card.actions(back());
    }

    private void reporting(WorkCard card, Side.Reporting side) {
        List<Card> load = bench.model().load().orElseThrow().together();
        Optional<Card> lot = load.size() == 1 ? Optional.of(load.getFirst()) : side.traveller()
                .flatMap(id -> load.stream().filter(one -> one.id().equals(id)).findFirst());
        if (lot.isEmpty()) {
            card.head("Problem", "Which traveller?");
            card.add(Texts.choices(load.stream().<Component>map(one -> bench.way(
                    one.id() + " · " + one.traveller().part().description(),
                    () -> side(new Side.Reporting(Optional.of(one.id()), new TreeSet<>(), false)))).toList()));
        } else if (side.pieces().isEmpty()) {
            pieces(card, lot.get());
        } else {
            words(card, side, lot.get().id());
        }
        card.actions(back());
    }

    private void pieces(WorkCard card, Card lot) {
        card.head("Problem · " + lot.id(), "Which pieces?");
        List<Integer> all = lot.traveller().pieces();
        Div choices = Texts.choices(List.of(bench.way("All pieces", () -> side(
                new Side.Reporting(Optional.of(lot.id()), new TreeSet<>(all), false)))));
        if (all.size() <= PIECES_SHOWN_MAX) {
            all.forEach(piece -> choices.add(bench.way("Piece " + piece, () -> side(
                    new Side.Reporting(Optional.of(lot.id()), new TreeSet<>(List.of(piece)), false)))));
        } else {
            card.instruction("The lot is large: report all pieces, and name the piece in your own words.");
        }
        card.add(choices);
    }

    private void words(WorkCard card, Side.Reporting side, TravellerId lot) {
        card.head("Problem · " + lot + " · " + said(side.pieces()), "What is wrong?");
        if (side.typing()) {
            TextPad pad = new TextPad("In your own words", "Write it down", WORDS_MAX);
            pad.addEnteredListener(entered -> bench.touched().does(() -> report(side, lot, entered.value())));
            card.add(pad);
            return;
        }
        Div choices = Texts.choices(PROBLEMS.stream().<Component>map(what ->
                bench.main(what, () -> report(side, lot, what))).toList());
        choices.add(bench.way("Other words", () -> side(
                new Side.Reporting(side.traveller(), side.pieces(), true))));
        card.add(choices);
    }

    private Verdict report(Side.Reporting side, TravellerId lot, String text) {
        String cut = text.substring(0, Math.min(text.length(), WORDS_MAX));
        return done(bench.deeds().report(lot, List.copyOf(side.pieces()), cut));
    }

    private void correcting(WorkCard card, Side.Correcting side) {
        List<ReadingSpec> mine = bench.model().correctable();
        if (side.reading().isEmpty()) {
            card.head("Correction", "Which reading?");
            card.add(Texts.choices(mine.stream().<Component>map(spec -> bench.way(spec.label(), () -> side(
                    new Side.Correcting(Optional.of(spec), Optional.empty(), Optional.empty(), false)))).toList()));
        } else if (side.value().isEmpty()) {
            newValue(card, side.reading().get());
        } else if (side.reason().isEmpty()) {
            reason(card, side);
        } else {
            pin(card, side.reading().get(), side.value().get(), side.reason().get());
        }
        card.actions(back());
    }

    private void newValue(WorkCard card, ReadingSpec spec) {
        card.head("Correction", "What is right?");
        KeyPad pad = DoingFaces.pad(new Doing.Reading(spec, writer.unit(spec), writer.limits(spec), Optional.empty()));
        pad.addEnteredListener(entered -> bench.touched().shows(() -> DoingFaces.number(entered.value()).ifPresent(
                value -> side(new Side.Correcting(Optional.of(spec), Optional.of(value), Optional.empty(), false)))));
        card.add(Texts.beside(pad));
    }

    private void reason(WorkCard card, Side.Correcting side) {
        card.head("Correction · " + side.reading().orElseThrow().label(), "Why?");
        if (side.typing()) {
            TextPad pad = new TextPad("In your own words", "Go on", WORDS_MAX);
            pad.addEnteredListener(entered -> bench.touched().shows(() -> because(side, entered.value())));
            card.add(pad);
            return;
        }
        Div choices = Texts.choices(SLIPS.stream().<Component>map(
                why -> bench.way(why, () -> because(side, why))).toList());
        choices.add(bench.way("Other words", () -> side(
                new Side.Correcting(side.reading(), side.value(), Optional.empty(), true))));
        card.add(choices);
    }

    private void because(Side.Correcting side, String why) {
        side(new Side.Correcting(side.reading(), side.value(),
                Optional.of(why.substring(0, Math.min(why.length(), WORDS_MAX))), false));
    }

    private void pin(WorkCard card, ReadingSpec spec, BigDecimal value, String reason) {
        card.head("Correction · " + reason, spec.label() + ": " + writer.value(spec, value));
        KeyPad pad = KeyPad.pin("Your PIN signs the correction", 4);
        pad.addEnteredListener(entered -> bench.touched().does(() -> done(bench.deeds().correct(bench.model().ids(),
                step().id(), spec.id(), value, reason, entered.value()))));
        card.add(Texts.words("instruction", "The old value stays in the record, struck through."),
                Texts.beside(pad));
    }

    private void opening(WorkCard card) {
        bench.model().closedBin().ifPresent(bin -> {
            card.head("Bin " + bin, "Open it?");
            card.instruction("Only in a clean place, gloves on. A sealed bag is spent once it is open, and the shorter"
                    + " window in the open counts from now on.");
            card.actions(bench.main("It is open", () -> done(bench.deeds().open(bin))), back());
        });
    }

    private void doubting(WorkCard card, Side.Doubting side) {
        ReadingSpec spec = side.reading();
        String value = writer.value(spec, side.value());
        card.head(spec.label(), spec.isPassFail() ? "Not in order?" : value + " is out of limits");
        card.instruction(spec.beforeHold()
                ? "In order: " + writer.limits(spec) + ". Written down, it stops the start until the next reading is in"
                        + " order."
                : "In order: " + writer.limits(spec) + ". Written down, it opens a nonconformance and the pieces wait"
                        + " in quarantine.");
        card.actions(
                Action.main("Yes, write it down", pressed -> bench.touched().does(() -> done(bench.deeds().read(
                        bench.model().ids(), step().id(), spec.id(), side.value(), spec.label() + ": " + value)))),
                bench.main("Keyed wrong: take it back", () -> takeBack(side)));
    }

    private Verdict takeBack(Side.Doubting side) {
        bench.model().side(Optional.empty());
        return bench.deeds().refuse(bench.model().ids(), "take reading", new BenchRefusal.ReadingTakenBack(
                step().id(), side.reading().id(), side.value()));
    }

    private Action back() {
        return bench.way("Back to the card", () -> bench.model().side(Optional.empty()));
    }

    private void side(Side next) {
        bench.model().side(Optional.of(next));
    }

    /** Goes back to the card where the deed counts. */
    private Verdict done(Verdict verdict) {
        if (verdict instanceof Verdict.Accepted) {
            bench.model().side(Optional.empty());
        }
        return verdict;
    }

    private Step step() {
        return bench.model().next().flatMap(Load::stepOf).orElseThrow();
    }

    private static String said(SortedSet<Integer> pieces) {
        return pieces.size() == 1 ? "piece " + pieces.first() : pieces.size() + " pieces";
    }
}
