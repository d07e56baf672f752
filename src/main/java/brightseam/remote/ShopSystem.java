package brightseam.remote;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.SystemId;
import java.util.List;
import java.util.Optional;

/**
 * One shop system as its events have made it.
 *
 * @param id its name
 * @param title what people call it
 * @param scopes what it may do, sorted
 * @param answering the lead who answers for what it releases; empty where it releases nothing
 * @param token the token that it shows, while one is in use
 * @param tokensMade how many were ever made for it
 * @param withdrawn why and when its last token was withdrawn, while it has none
 */
public record ShopSystem(SystemId id, String title, List<Scope> scopes, Optional<Answering> answering,
        Optional<Token> token, int tokensMade, Optional<Withdrawn> withdrawn) {

    /** Who answers, as the signature under it says. */
    public record Answering(BadgeId badge, String name) {}

    /**
     * A token in use.
     *
     * @param sha256 SHA-256 of the token as 64 hexadecimal digits; the token is kept nowhere
     */
    public record Token(String sha256, Moment madeAt, BadgeId madeBy) {}

    /** The end of a token. */
    public record Withdrawn(String reason, Moment at, BadgeId by) {}

    /** Copies and sorts the scopes. */
    public ShopSystem {
        scopes = sorted(scopes);
    }

    /** The system after {@code event}; {@code before} is empty for the first one only. */
    public static ShopSystem evolve(Optional<ShopSystem> before, SystemEvent event) {
        return switch (event) {
            case SystemEvent.Registered first -> new ShopSystem(first.system(), first.title(), first.scopes(),
                    first.answering().map(who -> new Answering(who.badge(), who.name())), Optional.empty(), 0,
                    Optional.empty());
            case SystemEvent.TokenMade made -> {
                ShopSystem known = known(before, event);
                yield new ShopSystem(known.id, known.title, known.scopes, known.answering,
                        Optional.of(new Token(made.tokenSha256(), made.origin().at(), made.signer().badge())),
                        known.tokensMade + 1, Optional.empty());
            }
            case SystemEvent.AnsweredFor answered -> {
                ShopSystem known = known(before, event);
                yield new ShopSystem(known.id, known.title, known.scopes, Optional.of(new Answering(
                        answered.answering().badge(), answered.answering().name())), known.token, known.tokensMade,
                        known.withdrawn);
            }
            case SystemEvent.TokenWithdrawn ended -> {
                ShopSystem known = known(before, event);
                yield new ShopSystem(known.id, known.title, known.scopes, known.answering, Optional.empty(),
                        known.tokensMade, Optional.of(new Withdrawn(
                                ended.reason(), ended.origin().at(), ended.signer().badge())));
            }
        };
    }

    /** Whether it may do {@code scope}. */
    public boolean may(Scope scope) {
        return scopes.contains(scope);
    }

    static List<Scope> sorted(List<Scope> scopes) {
        return scopes.stream().distinct().sorted().toList();
    }

    private static ShopSystem known(Optional<ShopSystem> before, SystemEvent event) {
        return before.orElseThrow(() -> new IllegalArgumentException("not registered: " + event.system()));
    }
}
