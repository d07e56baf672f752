package brightseam.demo;

import brightseam.scan.shell.LabelPrinter;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The demo's labels on sheets of A4, as PDF; for anybody who is signed in. */
@RestController
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoLabelSheet {

    static final String PATH = "demo-labels.pdf";

    private final DemoLabels labels;
    private final LabelPrinter printer;

    DemoLabelSheet(DemoLabels labels, LabelPrinter printer) {
        this.labels = labels;
        this.printer = printer;
    }

    @GetMapping("/" + PATH)
    ResponseEntity<byte[]> sheets() {
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + PATH + "\"")
                .body(printer.sheets(labels.all()));
    }
}
