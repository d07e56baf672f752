package brightseam.session.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Prepared;
import brightseam.people.Signer;
import brightseam.session.ChamberSession;
import brightseam.session.LockPass;
import brightseam.traveller.shell.Actor;
import java.util.List;

/** What a session writes into the travellers' records. Nothing is stored here: the session joins it to its own part. */
public interface TravellerRecord {

    /**
     * Passes travellers into a chamber: the pass-in step of each, begun and signed.
     *
     * @param station the lock, or the chamber that stands open
     * @param way how they go in: {@code open chamber} or {@code lock pass 3}
     * @param touching labels of what touches the pieces on the way, the new gloves among them
     */
    Prepared<?> passIn(Actor actor, Origin origin, SessionId session, StationId station, String way,
            List<TravellerId> travellers, List<SupplyId> touching, Signer signer);

    /** Those of {@code travellers} whose weld step lacks nothing but its signature. */
    List<TravellerId> weldsToSign(Origin origin, List<TravellerId> travellers);

    /** Signs the weld step of {@code travellers}. */
    Prepared<?> signWeld(Actor actor, Origin origin, List<TravellerId> travellers, Signer signer);

    /** Writes down what became of an opening of the lock's inner door for the travellers that went in by it. */
    Prepared<?> notePassIn(Origin origin, ChamberSession session, LockPass pass);

    /** Writes down that a traveller left the chamber through the lock. */
    Prepared<?> notePassOut(Origin origin, ChamberSession session, TravellerId traveller);

    /** Writes down on the travellers' records that something was refused. */
    void noteRefusal(Actor actor, List<TravellerId> travellers, String attempt, List<Refusal> refusals);
}
