package brightseam.ui.stamp;

import brightseam.evidence.shell.EvidenceFiles;
import brightseam.kernel.TravellerId;
import brightseam.people.shell.SignIn;
import brightseam.people.shell.SignedInPerson;
import brightseam.report.shell.Records;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The prints of a record, for inspectors and leads: 403 for anybody else, 404 where there is no such traveller. */
@RestController
class RecordController {

    /** A PDF is shown by a part of the browser that the pages' own policy shuts out. */
    private static final String PRINT_POLICY = "default-src 'none'; object-src 'self'; style-src 'unsafe-inline';"
            + " frame-ancestors 'none'";

    private final Records records;
    private final EvidenceFiles evidence;
    private final SignIn signIn;

    RecordController(Records records, EvidenceFiles evidence, SignIn signIn) {
        this.records = records;
        this.evidence = evidence;
        this.signIn = signIn;
    }

    @GetMapping("/stamp/{id}/record.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable String id, HttpServletRequest request) {
        String by = signIn.here().map(SignedInPerson::displayName).orElse("nobody");
        return answer(request, id, "record.pdf", MediaType.APPLICATION_PDF, true, label -> records.pdf(label, by));
    }

    @GetMapping("/stamp/{id}/record.csv")
    ResponseEntity<byte[]> csv(@PathVariable String id, HttpServletRequest request) {
        return answer(request, id, "entries.csv", new MediaType("text", "csv", StandardCharsets.UTF_8), false,
                label -> records.csv(label).map(text -> text.getBytes(StandardCharsets.UTF_8)));
    }

    @GetMapping("/stamp/{id}/joints.csv")
    ResponseEntity<byte[]> joints(@PathVariable String id, HttpServletRequest request) {
        return answer(request, id, "joints.csv", new MediaType("text", "csv", StandardCharsets.UTF_8), false,
                label -> records.jointsCsv(label).map(text -> text.getBytes(StandardCharsets.UTF_8)));
    }

    @GetMapping("/stamp/{id}/evidence.pdf")
    ResponseEntity<byte[]> evidencePdf(@PathVariable String id, HttpServletRequest request) {
        String by = signIn.here().map(SignedInPerson::displayName).orElse("nobody");
        return answer(request, id, "record.pdf", MediaType.APPLICATION_PDF, false,
                label -> present(label).map(there -> evidence.pdf(there, by)));
    }

    @GetMapping("/stamp/{id}/evidence.json")
    ResponseEntity<byte[]> evidenceJson(@PathVariable String id, HttpServletRequest request) {
        return answer(request, id, "evidence.json", MediaType.APPLICATION_JSON, false,
                label -> present(label).map(evidence::json));
    }

    private Optional<TravellerId> present(TravellerId label) {
        return records.document(label).map(document -> label);
    }

    private static ResponseEntity<byte[]> answer(HttpServletRequest request, String id, String name, MediaType type,
            boolean shown, Function<TravellerId, Optional<byte[]>> content) {
        if (!request.isUserInRole("INSPECTOR") && !request.isUserInRole("LEAD")) {
            return ResponseEntity.status(HttpStatus.FORBIDDEN).build();
        }
        ContentDisposition disposition = (shown ? ContentDisposition.inline() : ContentDisposition.attachment())
                .filename(id + "-" + name).build();
        return label(id).flatMap(content).map(bytes -> ResponseEntity.ok().contentType(type)
                        .cacheControl(CacheControl.noStore())
                        .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
                        .header("Content-Security-Policy", PRINT_POLICY).body(bytes))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static Optional<TravellerId> label(String id) {
        try {
            return Optional.of(new TravellerId(id));
        } catch (IllegalArgumentException noLabel) {
            return Optional.empty();
        }
    }
}
