package brightseam.remote;

import brightseam.kernel.Origin;
import brightseam.kernel.SystemId;
import brightseam.people.Signer;
import java.util.List;
import java.util.Optional;

/** What happened to a shop system. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface SystemEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which system. */
    SystemId system();

    /** It was taken in; see {@link ShopSystem} for the parts. */
    record Registered(Origin origin, SystemId system, String title, List<Scope> scopes, Optional<Signer> answering,
            Signer signer) implements SystemEvent {
        /** Copies the list. */
        public Registered {
            scopes = List.copyOf(scopes);
        }
    }

    /** A token was made for it. Its hash is no secret: nobody finds 32 random bytes by it. */
    record TokenMade(Origin origin, SystemId system, String tokenSha256, Signer signer) implements SystemEvent {}

    /** Another lead answers for it. */
    record AnsweredFor(Origin origin, SystemId system, Signer answering, Signer signer) implements SystemEvent {}

    /** Its token was withdrawn. */
    record TokenWithdrawn(Origin origin, SystemId system, String reason, Signer signer) implements SystemEvent {}
}
