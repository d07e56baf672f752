package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.report.Phrases;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A kit as a whole.
 *
 * @param id its label
 * @param title what people call it
 * @param verdict whether it can go in
 * @param lacking pieces that the parts list asks for and no traveller has
 * @param holdUps travellers that are not ready, and why
 * @param closing travellers that are ready but whose clean window closes before the session
 * @param suspects travellers under suspicion, those that are through the lock too
 * @param session when the chamber session is due
 */
public record KitStanding(
        KitId id,
        String title,
        Verdict verdict,
        List<String> lacking,
        List<HoldUp> holdUps,
        List<HoldUp> closing,
        List<HoldUp> suspects,
        Optional<Countdown> session) {

    /** Whether a kit can go in. */
    public enum Verdict {
        /** No traveller was released for it. */
        NOTHING_RELEASED("Nothing released"),
        /** Something is lacking or not ready. */
        CANNOT_GO_IN_YET("Cannot go in yet"),
        /** Everything is ready. */
        CAN_GO_IN("Can go in"),
        /** Everything is through the lock. */
        IS_IN("Is in");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /** What the board says. */
        public String words() {
            return words;
        }
    }

    /** A traveller that holds the kit up. */
    public record HoldUp(TravellerId traveller, String why) {}

    /** How {@code kit} stands with {@code cards}, all of its travellers, ended ones too. */
    public static KitStanding of(Kit kit, Collection<Card> cards, Moment now) {
        List<Card> own = cards.stream().filter(card -> card.traveller().phase() != Phase.SCRAPPED)
                .sorted(Comparator.comparing(Card::id)).toList();
        List<String> lacking = lacking(kit, own);
        List<HoldUp> holdUps = own.stream().filter(card -> card.traveller().phase() == Phase.ACTIVE)
                .filter(card -> !card.isReady(now))
                .map(card -> new HoldUp(card.id(), String.join("; ", MissingWords.shortly(card, now)))).toList();
        Optional<Countdown> session = Countdowns.session(kit, now);
        return new KitStanding(kit.id(), kit.title(), verdict(own, lacking, holdUps), lacking, holdUps,
                session.map(due -> closing(own, due.left(), now)).orElse(List.of()), suspects(own), session);
    }

    /** The same without what changes by itself from second to second. */
    KitStanding withoutTime() {
        return new KitStanding(id, title, verdict, lacking, holdUps, closing, suspects, Optional.empty());
    }

    private static Verdict verdict(List<Card> own, List<String> lacking, List<HoldUp> holdUps) {
        if (own.isEmpty()) {
            return Verdict.NOTHING_RELEASED;
        }
        if (!lacking.isEmpty() || !holdUps.isEmpty()) {
            return Verdict.CANNOT_GO_IN_YET;
        }
        boolean allIn = own.stream().noneMatch(card -> card.traveller().phase() == Phase.ACTIVE);
        return allIn ? Verdict.IS_IN : Verdict.CAN_GO_IN;
    }

    private static List<HoldUp> closing(List<Card> own, Duration untilSession, Moment now) {
        Moment due = now.plus(untilSession.isNegative() ? Duration.ZERO : untilSession);
        return own.stream().filter(card -> card.isReady(now) && !card.isReady(due))
                .map(card -> new HoldUp(card.id(), String.join("; ", MissingWords.shortly(card, due))
                        + " when the session is due"))
                .toList();
    }

    private static List<HoldUp> suspects(List<Card> own) {
        return own.stream().filter(card -> card.traveller().isSuspect())
                .map(card -> new HoldUp(card.id(), Phrases.pieces(card.traveller().pieces()) + ", "
                        + Phrases.phase(card.traveller().phase())))
                .toList();
    }

    private record PartKey(String partNumber, String drawingRevision) {}

    private static List<String> lacking(Kit kit, List<Card> own) {
        Map<PartKey, Integer> asked = kit.lines().stream().collect(Collectors.groupingBy(
                line -> new PartKey(line.partNumber(), line.drawingRevision()), LinkedHashMap::new,
                Collectors.summingInt(KitLine::quantity)));
        Map<PartKey, Integer> present = own.stream().map(Card::traveller).collect(Collectors.groupingBy(
                KitStanding::key, Collectors.summingInt(traveller -> traveller.pieces().size())));
        List<String> lacking = new ArrayList<>();
        asked.forEach((part, quantity) -> {
            int missing = quantity - present.getOrDefault(part, 0);
            if (missing > 0) {
                lacking.add(missing + " of " + quantity + " " + part.partNumber() + " not released");
            }
        });
        return lacking;
    }

    private static PartKey key(Traveller traveller) {
        return new PartKey(traveller.part().partNumber(), traveller.part().drawingRevision());
    }
}
