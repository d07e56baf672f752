package brightseam.trace.shell;

import brightseam.kernel.TravellerId;
import brightseam.trace.Reach;
import brightseam.trace.Reached;
import brightseam.trace.Thing;
import brightseam.trace.ThingKind;
import brightseam.trace.Touch;
import brightseam.trace.TraceQuestion;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;

/** From a thing to what it touched. */
final class ReachRows {

    /** Counts on the index alone; what ended is not past this, and what lasts is. */
    private static final String REACHED = """
            select c.contacts, c.touched, c.joints, c.from_millis, c.until_millis,
            """ + WhereaboutsRows.COLUMNS + """
            from (
                select traveller_id, count(*) contacts, max(piece_count) touched, max(joint) joints,
                    min(from_millis) from_millis,
                    max(coalesce(until_millis, 9223372036854775807)) until_millis
                from trace_contact
                where kind = ? and label = ? and lot = ? and from_millis <= ?
                    and (until_millis is null or until_millis >= ?)
                group by traveller_id) c
            join trace_traveller t on t.traveller_id = c.traveller_id
            """;

    private static final String TOUCHES = "select " + ContactRows.COLUMNS + """
            from trace_contact
            where traveller_id in (:travellers) and kind = :kind and label = :label and lot = :lot
                and from_millis <= :until and (until_millis is null or until_millis >= :from)
            order by from_millis, position, number
            """;

    /** As many travellers are asked for in one statement. */
    private static final int TRAVELLERS_AT_ONCE = 500;

    private final JdbcClient jdbc;

    ReachRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Reach reach(TraceQuestion question) {
        Map<TravellerId, Reached> reached = new LinkedHashMap<>();
        Set<TravellerId> atJoints = new TreeSet<>();
        for (Thing thing : things(question)) {
            jdbc.sql(REACHED).params(thing.kind().name(), thing.label(), thing.lot(), until(question), from(question))
                    .query((row, number) -> {
                        Reached one = reached(row, number);
                        if (!row.getString("joints").isEmpty()) {
                            atJoints.add(one.now().traveller());
                        }
                        return one;
                    }).list()
                    .forEach(one -> reached.merge(one.now().traveller(), one, Reached::with));
        }
        pieces(question, atJoints).forEach((traveller, touched) ->
                reached.computeIfPresent(traveller, (same, one) -> one.touching(touched.size())));
        return new Reach(question, reached.values().stream().sorted(LATEST_FIRST).toList());
    }

    /** Which pieces were touched, where each contact may be with other ones. */
    private Map<TravellerId, Set<Integer>> pieces(TraceQuestion question, Set<TravellerId> travellers) {
        Map<TravellerId, Set<Integer>> pieces = new LinkedHashMap<>();
        touches(question, travellers).forEach(touch ->
                pieces.computeIfAbsent(touch.traveller(), none -> new TreeSet<>()).addAll(touch.pieces()));
        return pieces;
    }

    private static final Comparator<Reached> LATEST_FIRST = Comparator
            .comparing((Reached one) -> one.until().orElse(Instant.MAX)).thenComparing(Reached::from).reversed()
            .thenComparing(one -> one.now().traveller());

    List<Touch> touches(TraceQuestion question, Collection<TravellerId> travellers) {
        List<String> labels = travellers.stream().map(TravellerId::value).distinct().toList();
        List<Touch> touches = new ArrayList<>();
        for (Thing thing : things(question)) {
            for (int i = 0; i < labels.size(); i += TRAVELLERS_AT_ONCE) {
                touches.addAll(jdbc.sql(TOUCHES)
                        .param("travellers", labels.subList(i, Math.min(labels.size(), i + TRAVELLERS_AT_ONCE)))
                        .param("kind", thing.kind().name()).param("label", thing.label()).param("lot", thing.lot())
                        .param("from", from(question)).param("until", until(question))
                        .query(ContactRows::touch).list());
            }
        }
        touches.sort(Comparator.comparing(Touch::from));
        return List.copyOf(touches);
    }

    List<Thing> lots(ThingKind kind, String label) {
        return things("kind = ? and label = ? order by first_position desc", kind.name(), label);
    }

    List<Thing> labelled(String label) {
        return things("label = ? order by first_position desc", label);
    }

    /** What the question is about, each with label and lot. */
    private List<Thing> things(TraceQuestion question) {
        if (!question.kind().hasLots()) {
            return question.label().map(label -> List.of(Thing.of(question.kind(), label))).orElse(List.of());
        }
        if (question.label().isPresent() && question.lot().isPresent()) {
            return List.of(new Thing(question.kind(), question.label().get(), question.lot().get()));
        }
        return question.label().map(label -> lots(question.kind(), label))
                .orElseGet(() -> things("kind = ? and lot = ? order by first_position desc", question.kind().name(),
                        question.lot().orElseThrow()));
    }

    private List<Thing> things(String which, Object... values) {
        return jdbc.sql("select kind, label, lot from trace_thing where " + which).params(values)
                .query((row, number) -> new Thing(ThingKind.valueOf(row.getString("kind")), row.getString("label"),
                        row.getString("lot"))).list();
    }

    private static long from(TraceQuestion question) {
        return question.from().map(Instant::toEpochMilli).orElse(Long.MIN_VALUE);
    }

    private static long until(TraceQuestion question) {
        return question.until().map(Instant::toEpochMilli).orElse(Long.MAX_VALUE);
    }

    private static Reached reached(ResultSet row, int number) throws SQLException {
        long until = row.getLong("until_millis");
        return new Reached(WhereaboutsRows.whereabouts(row, number), row.getInt("contacts"), row.getInt("touched"),
                Instant.ofEpochMilli(row.getLong("from_millis")),
                until == Long.MAX_VALUE ? Optional.empty() : Optional.of(Instant.ofEpochMilli(until)));
    }
}
