package brightseam.traveller;

import brightseam.people.Signer;
import brightseam.procedure.Procedure;
import java.util.Objects;
import java.util.Optional;

/**
 * A person's mark under one thing. The event that carries it says when and what it covers.
 *
 * @param content the SHA-256 of what was signed, by {@link SignedContent}, in 64 hexadecimal digits; empty for marks
 *     that were made before marks were bound
 */
public record Signature(Signer signer, Meaning meaning, Optional<String> content) {

    /** Refuses missing parts; an absent content is read from the first written forms. */
    public Signature {
        Objects.requireNonNull(signer, "signer");
        Objects.requireNonNull(meaning, "meaning");
        content = content == null ? Optional.empty() : content;
    }

    /** A mark that is bound to nothing, as in the first written forms. */
    public Signature(Signer signer, Meaning meaning) {
        this(signer, meaning, Optional.empty());
    }

    /** A mark under {@code traveller} as it stands. */
    static Signature under(Traveller traveller, Procedure procedure, Signer signer, Meaning meaning) {
        return new Signature(signer, meaning, Optional.of(SignedContent.sha256(traveller, procedure)));
    }
}
