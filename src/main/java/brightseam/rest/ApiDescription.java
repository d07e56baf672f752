package brightseam.rest;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Serves the description of the interface (OpenAPI 3.1). It is written by hand and says nothing of this shop. */
@RestController
class ApiDescription {

    private static final MediaType YAML = new MediaType("application", "yaml", StandardCharsets.UTF_8);

    private final ApiForm form = new ApiForm();

    @GetMapping(TokenFilter.DESCRIPTION)
    ResponseEntity<String> description() {
        return ResponseEntity.ok().contentType(YAML)
                .body(form.text());
    }

    ApiForm form() {
        return form;
    }
}
