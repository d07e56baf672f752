package brightseam.remote.shell;

import brightseam.kernel.SystemId;
import brightseam.ledger.Chain;
import brightseam.ledger.shell.EventCodec;
import brightseam.ledger.shell.StreamKind;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemEvent;
import brightseam.remote.SystemRelease;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** The streams of shop systems and their releases: what their events are called. A name is never given twice. */
final class SystemStreams {

    static final Map<String, Class<? extends SystemEvent>> TYPES = Map.of(
            "shop-system-registered.1", SystemEvent.Registered.class,
            "shop-system-token-made.1", SystemEvent.TokenMade.class,
            "shop-system-answered-for.1", SystemEvent.AnsweredFor.class,
            "shop-system-token-withdrawn.1", SystemEvent.TokenWithdrawn.class);

    static final Map<String, Class<? extends SystemRelease.Done>> RELEASE_TYPES =
            Map.of("shop-system-release.1", SystemRelease.Done.class);

    static final StreamKind<ShopSystem, SystemEvent> KIND =
            new StreamKind<>("shop-system", new EventCodec<>(TYPES), ShopSystem::evolve);

    static final StreamKind<SystemRelease, SystemRelease.Done> RELEASES =
            new StreamKind<>("shop-system-release", new EventCodec<>(RELEASE_TYPES), SystemRelease::evolve);

    /** A stream's identity has 48 characters at most: 192 bits of the key's hash. */
    private static final int IDENTITY_LENGTH = 48;

    private SystemStreams() {}

    /** The identity of the stream that a release of {@code system} under {@code key} has to itself. */
    static String release(SystemId system, String key) {
        return Chain.sha256((system + "\n" + key).getBytes(StandardCharsets.UTF_8))
                .substring(0, IDENTITY_LENGTH).toUpperCase(Locale.ROOT);
    }
}
