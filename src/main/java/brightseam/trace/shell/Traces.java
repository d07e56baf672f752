package brightseam.trace.shell;

import brightseam.kernel.TravellerId;
import brightseam.ledger.shell.Projection;
import brightseam.trace.Beside;
import brightseam.trace.Reach;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TraceQuestion;
import brightseam.trace.Whereabouts;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * Answers which pieces a thing touched, and what touched a piece. Reads rows that follow the ledger, so what was stored
 * is in the answer.
 */
@Service
public class Traces {

    private final ReachRows reach;
    private final PieceRows pieces;
    private final WhereaboutsRows whereabouts;

    /** Reads what the projection keeps. */
    public Traces(JdbcClient jdbc) {
        this.reach = new ReachRows(jdbc);
        this.pieces = new PieceRows(jdbc);
        this.whereabouts = new WhereaboutsRows(jdbc);
    }

    /** Keeps the rows of contacts; for the ledger. */
    @Bean
    static Projection traceProjection(JdbcClient jdbc) {
        return new TraceRows(jdbc);
    }

    /** Every traveller that the thing asked about touched, last contact first. Complete, however many. */
    public Reach reach(TraceQuestion question) {
        return reach.reach(question);
    }

    /** The contacts of the thing asked about with {@code travellers} alone, in order of time. */
    public List<Touch> touches(TraceQuestion question, Collection<TravellerId> travellers) {
        return reach.touches(question, travellers);
    }

    /** Every contact of the pieces that are, or ended, under {@code traveller}, in order of time. */
    public List<Touch> touches(TravellerId traveller) {
        return pieces.touches(traveller);
    }

    /** Every contact of one piece, in order of time; empty where it is not, and did not end, under that traveller. */
    public List<Touch> touches(TravellerId traveller, int piece) {
        return touches(traveller).stream().filter(touch -> touch.pieces().contains(piece)).toList();
    }

    /** Others that what carries dirt touched while it touched {@code traveller}: bins, baths, gloves; latest first. */
    public List<Beside> beside(TravellerId traveller) {
        return pieces.beside(traveller);
    }

    /** Where the pieces of {@code traveller} are; empty where there is no such traveller. */
    public Optional<Whereabouts> find(TravellerId traveller) {
        return whereabouts.find(traveller);
    }

    /** Where the pieces are that were set apart from {@code traveller}, sorted by label. */
    public List<Whereabouts> setApartFrom(TravellerId traveller) {
        return whereabouts.children(traveller);
    }

    /** Every traveller under suspicion, sorted by label. */
    public List<TravellerId> suspects() {
        return whereabouts.suspects();
    }

    /** Lots of {@code kind} that have been under {@code label} and touched pieces, latest first; a bath's fills. */
    public List<Thing> lots(ThingKind kind, String label) {
        return reach.lots(kind, label);
    }

    /** What else has that label: the fills that were in a station's tank, or the kinds that a supply is. */
    public List<Thing> labelled(String label) {
        return reach.labelled(label);
    }
}
