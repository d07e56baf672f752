package brightseam.traveller;

import brightseam.people.Signer;

/** A person's mark under one thing. The event that carries it says when and what it covers. */
public record Signature(Signer signer, Meaning meaning) {}
