package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kit.Kit;
import brightseam.traveller.Phase;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.Card;
import brightseam.ui.desk.Csv;
import brightseam.words.Words;
import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The board's lists as values: what runs out first comes first. */
final class BoardModel {

    private static final Comparator<BoardRow> FIRST_TO_RUN_OUT = Comparator
            .comparing((BoardRow row) -> row.first().map(Countdown::left).orElse(Duration.ofSeconds(Long.MAX_VALUE)))
            .thenComparing(BoardRow::kit).thenComparing(BoardRow::id);

    private BoardModel() {}

    /** A row for every traveller of {@code cards} that has not ended. */
    static List<BoardRow> rows(Collection<Card> cards, Collection<Kit> kits, Moment now) {
        Map<KitId, Kit> byId = kits.stream().collect(Collectors.toMap(Kit::id, Function.identity()));
        return cards.stream().filter(card -> !card.traveller().hasEnded())
                .map(card -> row(card, Optional.ofNullable(byId.get(card.traveller().kit())), now))
                .sorted(FIRST_TO_RUN_OUT).toList();
    }

    /** Whether each of {@code kits} can go in, the nearest session first. */
    static List<KitStanding> kits(Collection<Card> cards, Collection<Kit> kits, Moment now) {
        Map<KitId, List<Card>> byKit = cards.stream().collect(Collectors.groupingBy(card -> card.traveller().kit()));
        return kits.stream().map(kit -> KitStanding.of(kit, byKit.getOrDefault(kit.id(), List.of()), now))
                .sorted(Comparator.comparing((KitStanding kit) -> kit.session().map(Countdown::left)
                        .orElse(Duration.ofSeconds(Long.MAX_VALUE))).thenComparing(KitStanding::id))
                .toList();
    }

    /** What {@code card} says on the board. */
    static BoardRow row(Card card, Optional<Kit> kit, Moment now) {
        Traveller traveller = card.traveller();
        return new BoardRow(traveller.id(), traveller.kit(),
                traveller.part().description() + ", " + Words.count(traveller.pieces().size(), "piece", "pieces"),
                Whereabouts.step(card), Whereabouts.bin(card), Whereabouts.now(card), verdict(card, now),
                MissingWords.shortly(card, now), Countdowns.of(card, kit, now), traveller.isInQuarantine());
    }

    /** {@code rows} as a list for a spreadsheet program. */
    static String csv(List<BoardRow> rows) {
        return Csv.write(
                List.of("traveller", "kit", "part", "step", "bin", "now", "verdict", "missing", "runs_out_first",
                        "left_s"),
                rows.stream().map(row -> List.of(row.id().value(), row.kit().value(), row.part(), row.step(),
                        row.bin(), row.now(), row.verdict(), String.join("; ", row.missing()),
                        row.first().map(Countdown::words).orElse(""),
                        row.first().map(first -> String.valueOf(first.left().toSeconds())).orElse(""))).toList());
    }

    /** {@code kits} as a list for a spreadsheet program. */
    static String kitsCsv(List<KitStanding> kits) {
        return Csv.write(
                List.of("kit", "title", "verdict", "lacking", "held_up_by", "closes_before_session", "suspects",
                        "session_in_s"),
                kits.stream().map(kit -> List.of(kit.id().value(), kit.title(), kit.verdict().words(),
                        String.join("; ", kit.lacking()), holdUps(kit.holdUps()), holdUps(kit.closing()),
                        holdUps(kit.suspects()),
                        kit.session().map(due -> String.valueOf(due.left().toSeconds())).orElse(""))).toList());
    }

    private static String holdUps(List<KitStanding.HoldUp> holdUps) {
        return holdUps.stream().map(one -> one.traveller() + " (" + one.why() + ")").collect(Collectors.joining("; "));
    }

    private static String verdict(Card card, Moment now) {
        if (card.traveller().isInQuarantine()) {
            return card.traveller().isSuspect() ? "Suspect: quarantine" : "Quarantine";
        }
        if (card.traveller().phase() == Phase.PASSED_IN) {
            return "Passed in";
        }
        return card.isReady(now) ? "Ready to pass in" : "Not ready";
    }
}
