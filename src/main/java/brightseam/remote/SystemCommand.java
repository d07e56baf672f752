package brightseam.remote;

import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import brightseam.kernel.SystemId;
import brightseam.people.Signer;
import java.util.List;
import java.util.Optional;

/** What can be asked of the register of shop systems; each is signed by an administrator. */
public sealed interface SystemCommand {

    /** Which system. */
    SystemId system();

    /** When, by whom and where. */
    Origin origin();

    /** Who signs it. */
    Signer signer();

    /**
     * Takes a system in.
     *
     * @param answering the lead who answers for its releases, recognised by badge and PIN
     */
    record Register(SystemId system, String title, List<Scope> scopes, Optional<Signer> answering, Origin origin,
            Signer signer) implements SystemCommand {
        /** Strips the title, sorts the scopes; refuses an overlong title and no scope. */
        public Register {
            title = Syntax.text("title", title, 80);
            scopes = ShopSystem.sorted(scopes);
            if (scopes.isEmpty()) {
                throw new IllegalArgumentException("what it may do: choose at least one");
            }
        }
    }

    /**
     * Gives it a token; the one before it ends.
     *
     * @param tokenSha256 SHA-256 of the token, 64 hexadecimal digits
     */
    record MakeToken(SystemId system, String tokenSha256, Origin origin, Signer signer) implements SystemCommand {}

    /** Has another lead answer for its releases from now on. */
    record AnswerFor(SystemId system, Origin origin, Signer signer, Signer answering) implements SystemCommand {}

    /** Ends its token, with the reason in at most 200 characters. */
    record WithdrawToken(SystemId system, String reason, Origin origin, Signer signer) implements SystemCommand {
        /** Strips the reason; refuses an empty or overlong one. */
        public WithdrawToken {
            reason = Syntax.text("reason", reason, 200);
        }
    }
}
