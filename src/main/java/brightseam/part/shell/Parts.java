package brightseam.part.shell;

import brightseam.bath.Density;
import brightseam.bath.WettedArea;
import brightseam.kernel.PartNumber;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.ledger.shell.Projection;
import brightseam.ledger.shell.StateProjection;
import brightseam.part.Part;
import brightseam.part.PartCommand;
import brightseam.part.PartDecider;
import brightseam.part.PartEvent;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The shapes of the shop's parts. Single states come from the ledger; lists come from rows that follow it. */
@Service
public class Parts {

    private final EventStream<Part, PartEvent> streams;
    private final PartRows rows;

    /** Parts in {@code ledger}, with their rows in the database of {@code jdbc}. */
    public Parts(Ledger ledger, JdbcClient jdbc) {
        this.streams = new EventStream<>(ledger, PartStreams.KIND);
        this.rows = new PartRows(jdbc);
    }

    /** Keeps the rows of the parts; for the ledger. */
    @Bean
    public static Projection partProjection(JdbcClient jdbc) {
        return new StateProjection<>(PartStreams.KIND, new PartRows(jdbc));
    }

    /** The part with {@code partNumber}, as travellers and kits name it; empty where it was given no shape. */
    public Optional<Part> find(String partNumber) {
        return number(partNumber).flatMap(streams::load).map(found -> found.state());
    }

    /** Every part that was given a shape, sorted by number. */
    public List<Part> all() {
        return rows.all();
    }

    /** What a bath wets of {@code pieces} pieces, outside and inside; empty where their shape is not known. */
    public Optional<WettedArea> wettedArea(String partNumber, int pieces) {
        return find(partNumber).map(part -> part.wettedArea(pieces));
    }

    /** The same in square metres, outside and inside together. */
    public Optional<Double> areaSquareMetres(String partNumber, int pieces) {
        return wettedArea(partNumber, pieces).map(WettedArea::totalSquareMetres);
    }

    /**
     * Mass of {@code pieces} pieces in kilograms: as weighed or, where they were not, by their shape and the density of
     * {@code grade}; empty where neither is known.
     */
    public Optional<Double> massKilograms(String partNumber, int pieces, String grade) {
        return find(partNumber).flatMap(part -> part.massKilograms(pieces, Density.ofGrade(grade)));
    }

    /**
     * Carries out {@code command}.
     *
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing was stored then
     */
    public Outcome<Part> execute(PartCommand command) {
        return streams.execute(command.part(), part -> PartDecider.decide(part, command));
    }

    private static Optional<PartNumber> number(String text) {
        try {
            return Optional.of(new PartNumber(text));
        } catch (IllegalArgumentException noNumber) {
            return Optional.empty();
        }
    }
}
