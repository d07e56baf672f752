package brightseam.rest;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.shell.ShopClock;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Versioned;
import brightseam.remote.Scope;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import brightseam.ui.board.KitStanding;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Reads kits, and whether they can go in. */
@RestController
class KitsController {

    private final Kits kits;
    private final Travellers travellers;
    private final ShopClock clock;

    KitsController(Kits kits, Travellers travellers, ShopClock clock) {
        this.kits = kits;
        this.travellers = travellers;
        this.clock = clock;
    }

    /** A page of a list. */
    record Page(List<Sheet> kits, Optional<String> next) {}

    /** One kit. */
    record Sheet(String id, String title, Optional<Instant> sessionDue, boolean closed, List<Line> lines,
            List<String> travellers, Readiness readiness) {}

    /** One line of its parts list. */
    record Line(int lineNumber, String partNumber, String description, String drawingRevision, int quantity,
            String procedure, Optional<String> heat) {}

    /** Whether it can go in, as the board says it. */
    record Readiness(String verdict, List<String> lacking, List<HoldUp> heldUpBy, List<HoldUp> closesBeforeSession,
            List<HoldUp> suspects) {}

    /** A traveller, and why it is named. */
    record HoldUp(String traveller, String why) {}

    @GetMapping("/api/v1/kits")
    ResponseEntity<byte[]> list(HttpServletRequest request, @RequestParam Optional<String> after,
            @RequestParam Optional<String> limit) {
        Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap(), "after", "limit");
        int most = Pages.limit(limit);
        String from = after.map(KitId::new).map(KitId::value).orElse("");
        List<Kit> found = kits.open().stream().filter(kit -> kit.id().value().compareTo(from) > 0)
                .limit(most + 1L).toList();
        List<Kit> page = found.subList(0, Math.min(most, found.size()));
        return Answers.json(200, new Page(page.stream().map(kit -> sheet(kit, clock.now())).toList(),
                found.size() > most ? Optional.of(page.getLast().id().value()) : Optional.empty()));
    }

    @GetMapping("/api/v1/kits/{id}")
    ResponseEntity<byte[]> one(HttpServletRequest request, @PathVariable String id) {
        Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap());
        Versioned<Kit> kit = kits.find(new KitId(id)).orElseThrow(() -> new Problem.Thrown(
                Problem.notFound("No kit has the label " + id + ".")));
        return Answers.tagged(request, kit.version(), sheet(kit.state(), clock.now()));
    }

    private Sheet sheet(Kit kit, Moment now) {
        List<Card> cards = travellers.ofKit(kit.id());
        KitStanding standing = KitStanding.of(kit, cards, now);
        return new Sheet(kit.id().value(), kit.title(), kit.sessionDue(), kit.closed(),
                kit.lines().stream().map(KitsController::line).toList(),
                cards.stream().map(card -> card.id().value()).toList(),
                new Readiness(TravellerSheet.word(standing.verdict()), standing.lacking(),
                        holdUps(standing.holdUps()), holdUps(standing.closing()), holdUps(standing.suspects())));
    }

    private static Line line(KitLine line) {
        return new Line(line.lineNumber(), line.partNumber(), line.description(), line.drawingRevision(),
                line.quantity(), line.procedure(), line.heat().map(Object::toString));
    }

    private static List<HoldUp> holdUps(List<KitStanding.HoldUp> holdUps) {
        return holdUps.stream().map(one -> new HoldUp(one.traveller().value(), one.why())).toList();
    }
}
