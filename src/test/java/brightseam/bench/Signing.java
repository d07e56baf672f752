package brightseam.bench;

import brightseam.browser.ShopServer;
import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.kernel.StepId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.people.Signer;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Signs the first step of one traveller after another, through the service that the bench uses; the PIN aside. */
final class Signing implements LedgerBench.Contender {

    /** At most so many are signed in one turn; fewer than the states that the shop keeps in memory. */
    private static final int WAITING_FOR_ONE = 1_000;
    private static final int WAITING_MAX = 4_000;

    private final TravellerActions actions;
    private final Travellers travellers;
    private final Copies copies;
    private final Actor actor;
    private final Signer signer;
    private final TravellerId original;
    private final TravellerId closed;
    private final StepId step;
    private final int waitingMax;
    private final ConcurrentLinkedQueue<TravellerId> signed = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<TravellerId> waiting = new ConcurrentLinkedQueue<>();

    /** {@code original} stands where {@code step} is to be signed next, {@code closed} is through. */
    Signing(ShopServer shop, Copies copies, TravellerId original, StepId step, TravellerId closed,
            int signers) {
        this.actions = shop.bean(TravellerActions.class);
        this.travellers = shop.bean(Travellers.class);
        this.actor = shop.bean(Crew.class).actor(DemoPerson.ILKA_FERROW);
        this.signer = shop.bean(Crew.class).signer(DemoPerson.ILKA_FERROW);
        this.copies = copies;
        this.original = original;
        this.step = step;
        this.closed = closed;
        this.waitingMax = Math.min(WAITING_MAX, signers * WAITING_FOR_ONE);
    }

    /** Has enough travellers wait for a signature, and ends those that were signed. */
    void prepare() {
        copies.end(List.copyOf(signed), closed);
        signed.clear();
        waiting.addAll(copies.of(original, waitingMax - waiting.size()));
        waiting.forEach(travellers::find);
    }

    @Override
    public void store(int caller, long turn) {
        TravellerId next = waiting.poll();
        if (next == null) {
            throw new IllegalStateException("more than " + waitingMax + " signatures in one turn");
        }
        if (!(actions.signStep(actor, List.of(next), step, signer) instanceof Outcome.Done)) {
            throw new IllegalStateException(next + " was not signed");
        }
        signed.add(next);
    }

    @Override
    public void close() {}
}
