package brightseam.rest;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Outcome;
import brightseam.remote.ReleaseLine;
import brightseam.remote.Scope;
import brightseam.remote.ShopSystem;
import brightseam.remote.SystemRefusal;
import brightseam.remote.SystemRelease;
import brightseam.remote.shell.SystemReleases;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import com.networknt.schema.Schema;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;

/** Releases travellers for a shop system: all lines or none, and once under each key. */
@RestController
class ReleasesController {

    /** IETF draft "The Idempotency-Key HTTP Header Field", from memory; what a key may look like is our own choice. */
    private static final String KEY = "Idempotency-Key";
    private static final Pattern KEY_FORM = Pattern.compile("[A-Za-z0-9._:-]{8,64}");

    private final SystemReleases releases;
    private final Wording wording;
    private final Schema form;

    ReleasesController(SystemReleases releases, Wording wording, ApiDescription description) {
        this.releases = releases;
        this.wording = wording;
        this.form = description.form().schema("ReleaseRequest");
    }

    /** What was released. */
    record Released(String kit, List<String> travellers, String releasedBySystem, String answeringBadge,
            boolean repeated) {}

    /** 201 with the labels; 200 with the same labels where the key was sent before. */
    @PostMapping("/api/v1/kits/{id}/releases")
    ResponseEntity<byte[]> release(HttpServletRequest request, @PathVariable String id) throws IOException {
        ShopSystem system = Answers.system(request, Scope.RELEASE);
        requireJson(request);
        String key = key(request);
        KitId kit = new KitId(id);
        JsonNode root = ApiJson.read(body(request));
        List<String> faults = ApiForm.faults(form, root);
        if (!faults.isEmpty()) {
            throw new Problem.Thrown(Problem.malformed(faults));
        }
        SystemReleases.Asked asked = new SystemReleases.Asked(key, ApiJson.contentSha256(id, root), kit,
                text(root, "kit_title"), text(root, "session_due").map(ReleasesController::instant),
                root.path("lines").valueStream().map(ReleasesController::line).toList());
        return switch (releases.release(system, asked)) {
            case Outcome.Done<SystemReleases.Answer> done -> Answers.json(done.result().repeated() ? 200 : 201,
                    released(done.result().release(), done.result().repeated()));
            case Outcome.Refused<SystemReleases.Answer> refused -> Answers.problem(refused(refused.refusals()));
        };
    }

    private static Released released(SystemRelease release, boolean repeated) {
        return new Released(release.kit().value(), release.travellers().stream().map(TravellerId::value).toList(),
                release.system().value(), release.answering().value(), repeated);
    }

    private Problem refused(List<Refusal> refusals) {
        List<Problem.Refused> told = refusals.stream().map(this::told).distinct().toList();
        boolean keyUsed = refusals.stream().anyMatch(SystemRefusal.KeyUsedOtherwise.class::isInstance);
        return new Problem(keyUsed ? "Key used for something else" : "Refused by the shop's rules",
                keyUsed ? 422 : 409, told.stream().map(one -> one.reason() + " " + one.wayOut())
                        .collect(Collectors.joining(" ")), keyUsed ? "key-used" : "refused", told, 0);
    }

    private Problem.Refused told(Refusal refusal) {
        Explanation words = wording.explain(refusal);
        return new Problem.Refused(refusal.code(), words.word(), words.reason(), words.wayOut());
    }

    private static void requireJson(HttpServletRequest request) {
        String type = Optional.ofNullable(request.getContentType()).orElse("").split(";")[0].strip();
        if (!MediaType.APPLICATION_JSON_VALUE.equalsIgnoreCase(type)) {
            throw new Problem.Thrown(Problem.of(415, "unsupported-type", "Not of that type",
                    "Send application/json."));
        }
    }

    private static String key(HttpServletRequest request) {
        List<String> keys = Collections.list(request.getHeaders(KEY));
        if (keys.size() != 1 || !KEY_FORM.matcher(keys.getFirst()).matches()) {
            throw new Problem.Thrown(Problem.of(400, "key-missing", "No key of its own",
                    "Send the header " + KEY + " once, with 8 to 64 letters, digits, points, colons, hyphens or"
                            + " underscores; the same one again only for the same release."));
        }
        return keys.getFirst();
    }

    private static byte[] body(HttpServletRequest request) throws IOException {
        byte[] body;
        try (InputStream in = request.getInputStream()) {
            body = request.getContentLengthLong() > ApiJson.BYTES_MAX ? new byte[ApiJson.BYTES_MAX + 1]
                    : in.readNBytes(ApiJson.BYTES_MAX + 1);
        }
        if (body.length > ApiJson.BYTES_MAX) {
            throw new Problem.Thrown(Problem.of(413, "too-long", "Request too long",
                    "A request has at most " + ApiJson.BYTES_MAX + " bytes."));
        }
        return body;
    }

    private static ReleaseLine line(JsonNode line) {
        return new ReleaseLine(line.path("part_number").asString(), line.path("description").asString(),
                line.path("drawing_revision").asString(), line.path("quantity").intValue(),
                line.path("procedure").asString(), text(line, "procedure_revision"),
                new HeatId(line.path("heat").asString()));
    }

    private static Optional<String> text(JsonNode node, String name) {
        return node.has(name) ? Optional.of(node.path(name).asString()) : Optional.empty();
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException malformed) {
            throw Pages.malformed("session_due: a time such as 2031-03-04T08:00:00Z.");
        }
    }
}
