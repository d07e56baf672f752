package brightseam.app;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.List;
import java.util.Optional;
import org.springframework.web.util.HtmlUtils;

/**
 * Writes the page that enrols a tablet. Its barcode is QR, because the tablet's own camera app reads it, which knows
 * nothing of our labels. Where settings are found on tablets: from memory, and makers move them.
 */
final class EnrolPage {

    private static final String STYLE = """
            :root { color-scheme: light dark; font: 1.125rem/1.5 system-ui, sans-serif; }
            body { max-width: 46rem; margin: 0 auto; padding: 1.5rem; }
            h1 { font-size: 1.75rem; line-height: 1.2; margin: 0 0 .5rem; }
            h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; }
            a.go { display: inline-block; padding: .9rem 1.4rem; border-radius: .5rem; background: #14532d;
              color: #fff; text-decoration: none; font-weight: 600; margin: .25rem .5rem .25rem 0;
              overflow-wrap: anywhere; }
            code { font: .95rem/1.6 ui-monospace, monospace; overflow-wrap: anywhere; }
            .box { border: 1px solid; border-radius: .5rem; padding: .75rem 1rem; }
            svg { width: 12rem; height: 12rem; background: #fff; }
            li { margin: .35rem 0; }
            """;

    /** Sixteen pairs with their colons: half of a fingerprint, and a line of a narrow tablet. */
    private static final int HALF = 48;

    private EnrolPage() {}

    /**
     * The page.
     *
     * @param addresses where the shop is opened over HTTPS; none where HTTPS is off
     * @param enrol the address of this page for other machines; empty where it is not known
     * @param fingerprint of the shop's own authority; empty where the shop has a certificate of its own
     */
    static String html(String shopName, List<String> addresses, String enrol, Optional<String> fingerprint) {
        String body = addresses.isEmpty() ? "<p>This server does not listen on HTTPS. Ask the administrator.</p>"
                : fingerprint.map(EnrolPage::steps).orElse("<h2>Open the shop</h2>") + open(addresses) + code(enrol);
        return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Enrol this tablet</title>"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><style>" + STYLE
                + "</style></head><body><main><h1>Enrol this tablet</h1><p>" + HtmlUtils.htmlEscape(shopName)
                + ": a tablet is enrolled once. From then on PINs and records travel encrypted.</p>" + body
                + "</main></body></html>";
    }

    private static String steps(String fingerprint) {
        return """
                <h2>1. Load the shop's certificate</h2>
                <p><a class="go" href="/enrol/authority.crt">Load the certificate</a></p>
                <h2>2. Compare it before you trust it</h2>
                <p>Compare with the lines that the server printed when it was started, not with this page alone.
                If they differ, stop: somebody else answers in this network. Call the administrator.</p>
                <p class="box">SHA-256<br><code>%s</code></p>
                <h2>3. Trust it on this tablet</h2>
                <ul>
                <li><strong>Android:</strong> Settings, search for &ldquo;CA certificate&rdquo;, Install anyway, choose
                the file from Downloads.</li>
                <li><strong>iPad:</strong> Settings, Profile downloaded, Install. Then Settings, General, About,
                Certificate trust settings: switch it on.</li>
                <li><strong>Windows:</strong> open the file, Install certificate, Local machine, place it in
                &ldquo;Trusted root certification authorities&rdquo;.</li>
                <li><strong>Firefox</strong> keeps its own list: Settings, Certificates, View certificates, Authorities,
                Import; trust it to identify websites.</li>
                </ul>
                <p>It vouches for machines of private networks only.</p>
                <h2>4. Open the shop</h2>
                """.formatted(fingerprint.substring(0, HALF) + "<wbr>" + fingerprint.substring(HALF));
    }

    private static String open(List<String> addresses) {
        StringBuilder links = new StringBuilder("<p>Keep the address as a bookmark or on the start screen.</p><p>");
        addresses.forEach(address -> links.append("<a class=\"go\" href=\"").append(HtmlUtils.htmlEscape(address))
                .append("\">").append(HtmlUtils.htmlEscape(address)).append("</a>"));
        return links.append("</p>").toString();
    }

    private static String code(String address) {
        return address.isEmpty() ? "" : "<h2>The next tablet</h2><p>Point its camera here to open this page:<br><code>"
                + HtmlUtils.htmlEscape(address) + "</code></p>" + svg(address);
    }

    private static String svg(String address) {
        try {
            BitMatrix code = new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0);
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < code.getHeight(); y++) {
                for (int x = 0; x < code.getWidth(); x++) {
                    if (code.get(x, y)) {
                        path.append("M").append(x).append(" ").append(y).append("h1v1h-1z");
                    }
                }
            }
            return "<svg role=\"img\" aria-label=\"Barcode of this page's address\" viewBox=\"0 0 " + code.getWidth()
                    + " " + code.getHeight() + "\"><path d=\"" + path + "\"/></svg>";
        } catch (WriterException tooLong) {
            return "";
        }
    }
}
