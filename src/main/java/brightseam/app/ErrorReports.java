package brightseam.app;

import org.apache.catalina.core.StandardHost;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;

/** Has the web server's own answers written by {@link QuietErrorReport}. */
@Component
class ErrorReports implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        server.addContextCustomizers(context -> ((StandardHost) context.getParent())
                .setErrorReportValveClass(QuietErrorReport.class.getName()));
    }
}
