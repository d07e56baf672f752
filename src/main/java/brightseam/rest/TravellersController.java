package brightseam.rest;

import brightseam.evidence.shell.EvidenceFiles;
import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Entry;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import brightseam.report.shell.Records;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.traveller.shell.Travellers;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Reads travellers: states, steps, entries, prints. */
@RestController
class TravellersController {

    private static final MediaType LINES = MediaType.parseMediaType("application/x-ndjson");
    private static final int ENTRIES_MAX = 1_000;

    private final Travellers travellers;
    private final Records records;
    private final EvidenceFiles evidence;
    private final ShopClock clock;

    TravellersController(Travellers travellers, Records records, EvidenceFiles evidence, ShopClock clock) {
        this.travellers = travellers;
        this.records = records;
        this.evidence = evidence;
        this.clock = clock;
    }

    /** A page of a list; {@code next} is what to send as {@code after} for the next one. */
    record Page(List<TravellerSheet.Summary> travellers, Optional<String> next) {}

    @GetMapping("/api/v1/travellers")
    ResponseEntity<byte[]> list(HttpServletRequest request, @RequestParam Optional<String> state,
            @RequestParam Optional<String> kit, @RequestParam Optional<String> after,
            @RequestParam Optional<String> limit) {
        Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap(), "state", "kit", "after", "limit");
        int most = Pages.limit(limit);
        Optional<Boolean> ended = switch (state.orElse("open")) {
            case "open" -> Optional.of(false);
            case "ended" -> Optional.of(true);
            case "all" -> Optional.empty();
            default -> throw Pages.malformed("state: one of open, ended, all.");
        };
        String from = after.map(TravellerId::new).map(TravellerId::value).orElse("");
        List<Card> found = travellers.page(from, kit.map(KitId::new), ended, most + 1);
        List<Card> page = found.subList(0, Math.min(most, found.size()));
        return Answers.json(200, new Page(
                page.stream().map(card -> TravellerSheet.summary(card, clock.now())).toList(),
                found.size() > most ? Optional.of(page.getLast().id().value()) : Optional.empty()));
    }

    @GetMapping("/api/v1/travellers/{id}")
    ResponseEntity<byte[]> one(HttpServletRequest request, @PathVariable String id) {
        Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap());
        Card card = card(id);
        return Answers.tagged(request, card.version(), TravellerSheet.whole(card, clock.now()));
    }

    /**
     * The entries of the record behind version {@code after}, one in each line. Without {@code hash} and
     * {@code position} a line is, byte for byte, what its hash was made of.
     */
    @GetMapping("/api/v1/travellers/{id}/entries")
    ResponseEntity<byte[]> entries(HttpServletRequest request, @PathVariable String id,
            @RequestParam Optional<String> after) {
        Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap(), "after");
        if (after.filter(version -> !version.matches("\\d{1,9}")).isPresent()) {
            throw Pages.malformed("after: a version, a whole number from 0.");
        }
        long from = after.map(Long::parseLong).orElse(0L);
        List<Entry> entries = travellers.record(card(id).id()).stream().map(RecordedEvent::entry)
                .filter(entry -> entry.version() > from).limit(ENTRIES_MAX).toList();
        long last = entries.isEmpty() ? from : entries.getLast().version();
        return Answers.tagged(request, "v" + from + "-" + last, LINES, entries.stream().map(EntryLine::of)
                .collect(Collectors.joining()).getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping("/api/v1/travellers/{id}/record.pdf")
    ResponseEntity<byte[]> print(HttpServletRequest request, @PathVariable String id) {
        ShopSystem system = Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap());
        TravellerId label = card(id).id();
        return file(label + "-record.pdf", MediaType.APPLICATION_PDF,
                records.pdf(label, "system " + system.id()).orElseThrow());
    }

    /** The record as a file that proves itself without this server: as JSON, or as the print that carries it. */
    @GetMapping("/api/v1/travellers/{id}/evidence")
    ResponseEntity<byte[]> evidence(HttpServletRequest request, @PathVariable String id,
            @RequestParam Optional<String> form) {
        ShopSystem system = Answers.system(request, Scope.READ);
        Pages.only(request.getParameterMap(), "form");
        TravellerId label = card(id).id();
        return switch (form.orElse("json")) {
            case "json" -> file(label + "-evidence.json", MediaType.APPLICATION_JSON, evidence.json(label));
            case "pdf" -> file(label + "-evidence.pdf", MediaType.APPLICATION_PDF,
                    evidence.pdf(label, "system " + system.id()));
            default -> throw Pages.malformed("form: json or pdf.");
        };
    }

    private static ResponseEntity<byte[]> file(String name, MediaType type, byte[] content) {
        return ResponseEntity.ok().contentType(type).cacheControl(CacheControl.noStore())
                .header(HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content);
    }

    private Card card(String id) {
        return travellers.find(new TravellerId(id)).orElseThrow(() -> new Problem.Thrown(
                Problem.notFound("No traveller has the label " + id + ".")));
    }
}
