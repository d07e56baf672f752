package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.LabelEntry;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.people.Recognition;
import brightseam.people.Signer;
import brightseam.procedure.Step;
import brightseam.report.Phrases;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.ui.parts.Verdict;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Carries out what a person does on a load, and says what became of it. */
final class Deeds {

    private final BenchServices services;
    private final Actor actor;
    private final TravellerActions actions;
    private final Supplier<List<Card>> shown;

    /** {@code shown} answers the cards that the person has before their eyes. */
    Deeds(BenchServices services, Actor actor, Supplier<List<Card>> shown) {
        this.services = services;
        this.actor = actor;
        this.shown = shown;
        this.actions = services.actions();
    }

    Verdict put(Collection<TravellerId> ids, BinId bin, LabelEntry entry) {
        return verdict("Right bin", "In " + bin + " now.", () -> actions.putInBin(actor.by(entry), ids, bin));
    }

    Verdict close(BinId bin) {
        return verdict("Closed", bin + " is closed.", () -> actions.closeBin(actor, bin));
    }

    Verdict open(BinId bin) {
        return verdict("Open", bin + " is open: the window in the open counts.", () -> actions.openBin(actor, bin));
    }

    Verdict start(
            Collection<TravellerId> ids, Step step, StationId station, MadeReady ready, LabelEntry entry) {
        return verdict("Right station", "Step " + step.number() + " has begun at " + station + ".",
                () -> actions.startStep(
                        actor.by(entry), ids, step.id(), Optional.of(station), ready.confirmed(), ready.glovesOn(),
                        ready.labels()));
    }

    Verdict enterLate(Collection<TravellerId> ids, Step step, StationId station, MadeReady ready, Instant doneAt,
            String reason, String pin) {
        Actor reader = actor.seeing(shown.get());
        return signed(ids, "enter late", pin, signer -> verdict("Late entry", "Step " + step.number() + " "
                + step.title() + " is entered late; both times are in the record. Now read and sign it.",
                () -> actions.enterLate(reader, ids, step.id(), station, ready.confirmed(), ready.glovesOn(),
                        ready.labels(), doneAt, reason, signer)));
    }

    Verdict beginHold(Collection<TravellerId> ids, Step step) {
        return verdict("Begun", step.title() + ": the clock runs.", () -> actions.beginHold(actor, ids, step.id()));
    }

    Verdict endHold(Collection<TravellerId> ids, Step step) {
        return verdict("Time kept", step.title() + " has ended.", () -> actions.endHold(actor, ids, step.id()));
    }

    Verdict cutShort(Collection<TravellerId> ids, Step step, String why) {
        return verdict("Out early", step.title() + " was cut short: quarantine. Call the lead.",
                () -> actions.cutHoldShort(actor, ids, step.id(), why));
    }

    Verdict read(Collection<TravellerId> ids, StepId step, String reading, BigDecimal value, String words) {
        return verdict("Written down", words, () -> actions.takeReading(actor, ids, step, reading, value));
    }

    Verdict touch(Collection<TravellerId> ids, String what) {
        return verdict("Written down", "The clean window has ended. Nobody is blamed for saying so.",
                () -> actions.reportTouch(actor, ids, what));
    }

    Verdict glovesSpent(Collection<TravellerId> ids, String what) {
        return verdict("Written down", "Take them off. New gloves are scanned before the pieces are touched again.",
                () -> actions.reportGlovesSpent(actor, ids, what));
    }

    Verdict changeGloves(Collection<TravellerId> ids, SupplyId gloves, LabelEntry entry) {
        return verdict("Right gloves", gloves + " are on now.",
                () -> actions.changeGloves(actor.by(entry), ids, gloves));
    }

    Verdict report(TravellerId id, List<Integer> pieces, String text) {
        return verdict("Written down", id + " is in quarantine. Call the lead.",
                () -> actions.reportNonconformance(actor, id, pieces, text));
    }

    Verdict takeOut(TravellerId id, List<Integer> pieces, String reason, BinId bin, String pin) {
        return signed(List.of(id), "take out", pin, signer ->
                switch (services.loads().takeOut(actor.seeing(shown.get()), id, pieces, reason, bin, signer)) {
                    case Outcome.Done<Traveller> done -> new Verdict.Accepted("Taken out", done.result().id() + ", "
                            + Phrases.pieces(done.result().pieces()) + ", lies in " + bin
                            + ". Quarantine: call the lead. The rest goes on.");
                    case Outcome.Refused<Traveller> refused ->
                        Verdict.refused(services.wording(), refused.refusals());
                });
    }

    Verdict sign(Collection<TravellerId> ids, Step step, String pin) {
        return signed(ids, "sign step", pin, signer -> verdict("Signed",
                "Step " + step.number() + " " + step.title() + ".",
                () -> actions.signStep(actor.seeing(shown.get()), ids, step.id(), signer)));
    }

    /** The same correction on every traveller of the load, one after the other; the first refusal ends it. */
    Verdict correct(List<TravellerId> ids, StepId step, String reading, BigDecimal value, String reason, String pin) {
        Actor reader = actor.seeing(shown.get());
        return signed(ids, "correct reading", pin, signer -> {
            Verdict last = new Verdict.Accepted("Corrected", "");
            for (TravellerId id : ids) {
                last = verdict("Corrected", "The old value stays visible.",
                        () -> actions.correctReading(reader, id, step, reading, value, reason, signer));
                if (!(last instanceof Verdict.Accepted)) {
                    return last;
                }
            }
            return last;
        });
    }

    /** Refuses what never became a command, and writes that down on {@code ids}. */
    Verdict refuse(Collection<TravellerId> ids, String attempt, Refusal refusal) {
        return refuse(ids, attempt, List.of(refusal));
    }

    /** As {@link #refuse(Collection, String, Refusal)}, for several reasons at once. */
    Verdict refuse(Collection<TravellerId> ids, String attempt, List<Refusal> refusals) {
        actions.noteRefusal(actor, ids, attempt, refusals);
        return Verdict.refused(services.wording(), refusals);
    }

    private Verdict signed(Collection<TravellerId> ids, String attempt, String pin, Function<Signer, Verdict> deed) {
        try {
            return switch (services.authenticator().signing(actor.tablet(), actor.badge(), pin)) {
                case Recognition.Recognised known -> deed.apply(known.signer());
                case Recognition.NotRecognised not -> {
                    actions.noteRefusal(actor, ids, attempt, not.refusals());
                    yield Verdict.refused(services.wording(), not.refusals());
                }
            };
        } catch (NotStoredException lost) {
            return Verdict.notStored();
        }
    }

    private Verdict verdict(String word, String reason, Supplier<Outcome<List<Traveller>>> deed) {
        try {
            return switch (deed.get()) {
                case Outcome.Done<List<Traveller>> done -> new Verdict.Accepted(word, reason);
                case Outcome.Refused<List<Traveller>> refused ->
                    Verdict.refused(services.wording(), refused.refusals());
            };
        } catch (NotStoredException lost) {
            return Verdict.notStored();
        }
    }
}
