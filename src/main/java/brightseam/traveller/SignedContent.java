package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.procedure.Procedure;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is signed, word for word: the whole traveller as it stood before the mark, with the instruction of the step at
 * hand and the SHA-256 of the procedure that all instructions are in. Anybody can make it again from the events before
 * the mark. What the signer adds (a reason, a new value) stands in the event itself, beside the mark.
 *
 * <p>One fact a line, in a fixed order; texts in quotes, so that no text can pass for another line.
 */
public final class SignedContent {

    /** The form's name is its first line; a changed form gets the next number. */
    private static final String FORM = "Brightseam signed content 1";

    private final Traveller traveller;
    private final Procedure procedure;
    private final StringBuilder text = new StringBuilder();

    private SignedContent(Traveller traveller, Procedure procedure) {
        this.traveller = traveller;
        this.procedure = procedure;
    }

    /** The text that is hashed, lines ended by a line feed. */
    public static String text(Traveller traveller, Procedure procedure) {
        return new SignedContent(traveller, procedure).write();
    }

    /** Its SHA-256 (FIPS 180-4) over UTF-8, in 64 hexadecimal digits. */
    public static String sha256(Traveller traveller, Procedure procedure) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(text(traveller, procedure).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /**
     * Whether {@code events}, which follow from a signer's command, are signed on something else than was shown.
     *
     * @param shown the SHA-256 of what the signer had before their eyes; empty where no screen said
     */
    public static boolean isOtherThan(Optional<String> shown, Collection<? extends TravellerEvent> events) {
        return shown.isPresent() && events.stream().map(TravellerEvent::mark).flatMap(Optional::stream)
                .map(Signature::content).flatMap(Optional::stream).anyMatch(signed -> !signed.equals(shown.get()));
    }

    /**
     * Whether the mark at index {@code at} of {@code record} is bound to what the events before it make; true where it
     * is no mark or one of the first forms, which are bound to nothing.
     *
     * @param record everything recorded of one traveller, from the first
     */
    public static boolean fits(List<? extends TravellerEvent> record, int at, Procedure procedure) {
        TravellerEvent event = record.get(at);
        Optional<String> content = event.mark().flatMap(Signature::content);
        if (content.isEmpty()) {
            return true;
        }
        List<? extends TravellerEvent> before = event instanceof TravellerEvent.SetApart first
                ? first.history() : record.subList(0, at);
        for (int size = before.size(); size > 0; size--) {
            Traveller then = Traveller.fold(before.subList(0, size)).orElseThrow();
            if (sha256(then, procedure).equals(content.get())) {
                return true;
            }
            if (!before.get(size - 1).at().equals(event.at())) {
                return false;
            }
        }
        return false;
    }

    private String write() {
        line(FORM);
        line("traveller", traveller.id(), traveller.parent().map(Object::toString).orElse("-"));
        line("part", quoted(traveller.part().partNumber()), quoted(traveller.part().drawingRevision()),
                quoted(traveller.part().description()));
        line("kit", traveller.kit());
        line("heat", traveller.heat());
        line("pieces", list(traveller.pieces()));
        line("procedure", traveller.procedure().id(), traveller.procedure().revision(),
                traveller.procedure().sha256());
        line("phase", traveller.phase());
        line("bin", traveller.placement().map(where -> where.bin() + " " + where.binClass() + " "
                + (where.closed() ? "closed" : "open")).orElse("-"));
        line("gloves", traveller.glovesSpent() ? "spent" : "-");
        line("window", window());
        traveller.currentStep().flatMap(procedure::find).ifPresent(step ->
                line("at", step.id(), quoted(step.title()), quoted(step.instruction())));
        traveller.superseded().forEach(run -> run("superseded", run));
        route().forEach((step, run) -> run("run", run));
        traveller.arcs().forEach(arc -> line("arc", arc.joint(), arc.session(), arc.run(), arc.pass(),
                list(arc.pieces()), arc.welder(), moment(arc.begunAt()), moment(arc.endedAt()),
                moment(arc.provenUntil())));
        traveller.nonconformances().forEach(this::nonconformance);
        return text.toString();
    }

    private Map<StepId, StepRun> route() {
        return traveller.route().stream().filter(traveller.runs()::containsKey)
                .collect(Collectors.toMap(step -> step, traveller.runs()::get, (one, other) -> one,
                        java.util.LinkedHashMap::new));
    }

    private String window() {
        return switch (traveller.window()) {
            case Window.NotOpen not -> "not-open";
            case Window.Open open -> "open " + moment(open.openedAt()) + " " + open.usedBillionths() + " "
                    + open.handling() + " " + moment(open.since());
            case Window.Ended ended -> "ended " + moment(ended.at()) + " " + ended.why();
        };
    }

    private void run(String word, StepRun run) {
        line(word, run.step(), run.pass(), moment(run.startedAt()), run.startedBy(),
                run.station().map(Object::toString).orElse("-"), list(run.loadWith()));
        run.late().ifPresent(late -> line("  late", late.doneAt(), late.by(), quoted(late.reason())));
        run.holdBegunAt().ifPresent(at -> line("  hold", moment(at), moment(run.holdEndedAt())));
        run.readings().forEach(reading -> {
            line("  reading", reading.id(), reading.value().toPlainString(), inLimits(reading.inLimits()),
                    moment(reading.at()), reading.by());
            reading.correction().ifPresent(to -> line("  corrected", reading.id(), to.value().toPlainString(),
                    inLimits(to.inLimits()), moment(to.at()), to.by(), quoted(to.reason())));
        });
        run.signature().ifPresent(mark -> line("  signed", moment(run.signedAt()), mark.signer().badge(),
                mark.meaning(), mark.content().orElse("-")));
    }

    private void nonconformance(Nonconformance found) {
        line("nonconformance", found.number(), found.cause(), found.step(), found.pass(), list(found.pieces()),
                moment(found.openedAt()), quoted(found.text()));
        found.decision().ifPresent(how -> line("  decided", how.disposition(), moment(how.at()),
                how.signature().signer().badge(), quoted(how.reason())));
    }

    private void line(Object... words) {
        text.append(List.of(words).stream().map(Object::toString).collect(Collectors.joining(" "))).append('\n');
    }

    private static String inLimits(boolean inLimits) {
        return inLimits ? "in" : "out";
    }

    private static String moment(Optional<Moment> at) {
        return at.map(SignedContent::moment).orElse("-");
    }

    private static String moment(Moment at) {
        return at.wall() + "/" + at.elapsedMillis();
    }

    private static String list(Collection<?> all) {
        return all.isEmpty() ? "-" : all.stream().map(Object::toString).collect(Collectors.joining(","));
    }

    private static String quoted(String words) {
        return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n").replace("\r", "\\r") + '"';
    }
}
