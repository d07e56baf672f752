package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.report.Phrases;
import brightseam.traveller.Guide;
import brightseam.traveller.shell.Card;
import brightseam.ui.parts.Action;
import brightseam.ui.parts.KeyPad;
import brightseam.ui.parts.TextPad;
import brightseam.ui.parts.Texts;
import brightseam.ui.parts.Verdict;
import brightseam.ui.parts.WorkCard;
import brightseam.words.Wording;
import com.vaadin.flow.component.Component;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Draws how pieces come out of a load, and how a traveller of it goes into another basket. */
final class LoadFaces {

    private static final List<String> REASONS = List.of("Reject: dent or scratch", "Reject: heat colour",
            "Reject: stain or spot", "Suspect: touched something", "Suspect: fell down", "Suspect: mark not readable");
    private static final int WORDS_MAX = 120;

    private final Bench bench;

    LoadFaces(Bench bench) {
        this.bench = bench;
    }

    void taking(WorkCard card, Side.TakingOut side) {
        List<Card> load = bench.model().load().orElseThrow().together();
        Optional<Card> lot = load.size() == 1 ? Optional.of(load.getFirst())
                : side.traveller().flatMap(id -> load.stream().filter(one -> one.id().equals(id)).findFirst());
        if (lot.isEmpty()) {
            card.head("Take pieces out", "Of which traveller?");
            card.instruction("The rest of the load goes on; its clock is not stopped.");
            card.add(lots(load, id -> side.of(id)));
            card.actions(back());
        } else if (!side.chosen()) {
            pieces(card, side, lot.get());
        } else if (side.reason().isEmpty()) {
            reason(card, side, lot.get().id());
        } else if (side.bin().isEmpty()) {
            bin(card, side, lot.get());
        } else {
            pin(card, side, lot.get().id(), side.bin().get());
        }
    }

    void moving(WorkCard card, Side.Moving side) {
        List<Card> load = bench.model().load().orElseThrow().together();
        if (load.size() > 1 && side.traveller().isEmpty()) {
            card.head("Into another basket", "Which traveller?");
            card.add(lots(load, id -> new Side.Moving(Optional.of(id))));
        } else {
            card.head("Into another basket", "Scan the basket for "
                    + side.traveller().orElse(load.getFirst().id()) + ".");
            card.instruction("An empty one, or one that stands at the same step: they are one load from then on.");
        }
        card.actions(back());
    }

    private interface Choice {
        Side of(TravellerId id);
    }

    private Component lots(List<Card> load, Choice choice) {
        return Texts.choices(load.stream().<Component>map(one -> bench.way(
                one.id() + " · " + one.traveller().part().description(),
                () -> side(choice.of(one.id())))).toList());
    }

    private void pieces(WorkCard card, Side.TakingOut side, Card lot) {
        card.head("Take pieces out · " + lot.id(), "Which pieces?");
        List<Integer> all = lot.traveller().pieces();
        Action whole = bench.way("The whole lot", () -> side(side.of(lot.id()).all(all)));
        if (all.size() > SideFaces.PIECES_SHOWN_MAX) {
            card.instruction("The lot is large: take the whole lot out, and name the piece in your own words.");
            card.actions(whole, back());
            return;
        }
        card.add(Texts.choices(all.stream().<Component>map(piece -> piece(side, lot, piece)).toList()));
        Action chosen = bench.mainWay(side.pieces().isEmpty() ? "Touch the pieces" : "Take out "
                + Phrases.pieces(List.copyOf(side.pieces())), () -> side(side.of(lot.id()).all(side.pieces())));
        chosen.setEnabled(!side.pieces().isEmpty());
        card.actions(chosen, whole, back());
    }

    private Action piece(Side.TakingOut side, Card lot, int piece) {
        boolean on = side.pieces().contains(piece);
        Action action = bench.way((on ? "✓ Piece " : "Piece ") + piece, () -> side(side.of(lot.id()).touched(piece)));
        action.getElement().setAttribute("aria-pressed", String.valueOf(on));
        return action;
    }

    private void reason(WorkCard card, Side.TakingOut side, TravellerId lot) {
        card.head("Take out · " + lot + " · " + said(side), "Why?");
        if (side.typing()) {
            TextPad pad = new TextPad("In your own words", "Go on", WORDS_MAX);
            pad.addEnteredListener(entered -> bench.touched().shows(() -> side(side.because(
                    entered.value().substring(0, Math.min(entered.value().length(), WORDS_MAX))))));
            card.add(pad);
        } else {
            card.add(Texts.choices(REASONS.stream().<Component>map(why ->
                    bench.way(why, () -> side(side.because(why)))).toList()));
            card.actions(bench.way("Other words", () -> side(side.inOwnWords())), back());
            return;
        }
        card.actions(back());
    }

    private void bin(WorkCard card, Side.TakingOut side, Card lot) {
        List<BinClass> classes = Guide.bins(lot.traveller(), lot.procedure());
        card.head("Take out · " + lot.id() + " · " + said(side), "Scan the bin that they go into.");
        card.instruction("Another " + classes.stream().map(one -> Wording.words(one.name()))
                .collect(Collectors.joining(" or ")) + ". The clock of what comes out stops when your PIN has signed;"
                + " the rest goes on.");
        card.actions(back());
    }

    private void pin(WorkCard card, Side.TakingOut side, TravellerId lot, BinId bin) {
        card.head("Take out · " + lot, "Out of the load, into " + bin + ", now?");
        card.add(Texts.lines(List.of(lot + ", " + said(side), side.reason().orElseThrow(),
                "A nonconformance opens. What has a gap to keep is rinsed in time all the same.")));
        KeyPad pad = KeyPad.pin("Your PIN signs", 4);
        pad.addEnteredListener(entered -> bench.touched().does(() -> done(bench.deeds().takeOut(
                lot, List.copyOf(side.pieces()), side.reason().orElseThrow(), bin, entered.value()))));
        card.add(Texts.beside(pad));
        card.actions(bench.way("Another bin", () -> side(side.into(Optional.empty()))), back());
    }

    private Verdict done(Verdict verdict) {
        if (verdict instanceof Verdict.Accepted) {
            bench.model().side(Optional.empty());
        }
        return verdict;
    }

    private void side(Side next) {
        bench.model().side(Optional.of(next));
    }

    private Action back() {
        return bench.way("Back to the card", () -> bench.model().side(Optional.empty()));
    }

    private static String said(Side.TakingOut side) {
        return Phrases.pieces(List.copyOf(side.pieces()));
    }
}
