package brightseam.demo;

import brightseam.procedure.shell.ProcedureLibrary;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/**
 * The approvals of the demo's lead: first revision B, whose files lie beside this class's resources and which some lots
 * of the past still follow, then the files of the folder, which lots follow that are released by the latest.
 */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class DemoProcedures {

    private static final String FOLDER = "/demo/procedures/";
    private static final List<String> OF_THE_PAST =
            List.of("filler-wire.yaml", "machined-fitting.yaml", "tube.yaml");

    private final ProcedureLibrary procedures;
    private final Crew crew;
    private final boolean stayInThePast;

    /** With {@code stayInThePast} the folder's files are left to be approved by whoever tries the shop. */
    DemoProcedures(ProcedureLibrary procedures, Crew crew,
            @Value("${brightseam.demo-old-procedures:false}") boolean stayInThePast) {
        this.procedures = procedures;
        this.crew = crew;
        this.stayInThePast = stayInThePast;
    }

    /** What was approved first. */
    void approveOld() {
        for (String file : OF_THE_PAST) {
            Crew.done(procedures.approve(file, content(file), crew.origin(DemoPerson.BRAM_ODUYA)));
        }
    }

    /** Every file of the folder that is not approved yet. */
    void approveNew() {
        if (!stayInThePast) {
            procedures.candidates().stream().flatMap(candidate -> candidate.procedure().stream())
                    .filter(found -> procedures.find(found.ref()).isEmpty())
                    .forEach(found -> Crew.done(procedures.approve(
                            found.ref(), crew.origin(DemoPerson.BRAM_ODUYA))));
        }
    }

    private static byte[] content(String file) {
        try (InputStream in = DemoProcedures.class.getResourceAsStream(FOLDER + file)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
