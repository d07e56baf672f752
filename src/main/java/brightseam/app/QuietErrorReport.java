package brightseam.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;

/**
 * What the web server answers by itself, before any page or filter is asked, such as to an address that cannot be read:
 * the number of the fault, with the headers of every other answer, and nothing of what was asked or of what runs here.
 */
public final class QuietErrorReport extends ErrorReportValve {

    private static final int FAULTS_FROM = 400;

    /** Made by the web server, by name. */
    public QuietErrorReport() {
        setShowReport(false);
        setShowServerInfo(false);
    }

    @Override
    protected void report(Request request, Response response, Throwable failure) {
        int status = response.getStatus();
        if (status < FAULTS_FROM || response.getContentWritten() > 0 || !response.setErrorReported()) {
            return;
        }
        response.setHeader("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("X-Frame-Options", "DENY");
        response.setHeader("Referrer-Policy", "same-origin");
        response.setHeader("Cache-Control", "no-store");
        response.setContentType("text/plain");
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        try {
            response.getReporter().write("This cannot be answered (" + status + ").\n");
            response.finishResponse();
        } catch (IOException gone) {
            getContainer().getLogger().debug("nobody waits for the answer any more", gone);
        }
    }
}
