package brightseam.ui.weld;

import brightseam.kernel.SupplyId;
import brightseam.weld.AcceptanceTable;
import brightseam.weld.ColourRules;
import brightseam.weld.ColourScale;
import brightseam.weld.ColourVerdict;
import brightseam.weld.ColoursSeen;
import brightseam.weld.FindingKind;
import brightseam.weld.FindingNote;
import brightseam.weld.Judgement;
import brightseam.weld.Lighting;
import brightseam.weld.MapJoint;
import brightseam.weld.Ruling;
import brightseam.weld.Verdict;
import brightseam.weld.WeldColour;
import brightseam.weld.shell.Judging;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What an inspector has said of a joint so far, and what the table says of that. */
final class JudgeModel {

    private final ColourScale scale;
    private final Optional<AcceptanceTable> table;
    private final Set<String> weld = new LinkedHashSet<>();
    private Optional<String> band = Optional.empty();
    private Optional<Boolean> beforeBrushing = Optional.empty();
    private final Map<String, String> findings = new LinkedHashMap<>();
    private final List<String> photographs = new ArrayList<>();

    JudgeModel(ColourScale scale, MapJoint plan) {
        this.scale = scale;
        this.table = scale.table(plan.acceptance());
    }

    /** Puts a colour among those on the weld, or takes it away; whether it is among them now. */
    boolean touchWeld(String colour) {
        if (!weld.remove(colour)) {
            weld.add(colour);
        }
        return weld.contains(colour);
    }

    /** Makes {@code colour} that of the band at the edge, or says that there is none; whether it is the band now. */
    boolean touchBand(String colour) {
        band = band.filter(colour::equals).isPresent() ? Optional.empty() : Optional.of(colour);
        return band.isPresent();
    }

    /** The colour of the band at the edge of the shield. */
    Optional<String> band() {
        return band;
    }

    /** Says whether it was looked at before anything was brushed. */
    void brushed(boolean before) {
        beforeBrushing = Optional.of(before);
    }

    /** Says what was found, or that it was not. */
    void found(String kind, Optional<String> text) {
        text.ifPresentOrElse(words -> findings.put(kind, words), () -> findings.remove(kind));
    }

    /** Adds a stored photograph; whether there is room for it. */
    boolean photograph(String sha256) {
        boolean room = photographs.size() < Judgement.PHOTOGRAPHS_MAX && !photographs.contains(sha256);
        if (room) {
            photographs.add(sha256);
        }
        return room;
    }

    /** Takes a photograph out again. */
    void withoutPhotograph(String sha256) {
        photographs.remove(sha256);
    }

    /** The photographs, in the order in which they came. */
    List<String> photographs() {
        return List.copyOf(photographs);
    }

    /** What table and findings say together; empty until a colour is named. */
    Optional<Ruling> ruling() {
        return verdict().map(verdict -> kinds().stream().map(FindingKind::ruling)
                .reduce(verdict.ruling(), Ruling::worse));
    }

    /** The same in words, with what comes next; it asks for a colour until one is named. */
    List<String> ruledBy() {
        if (table.isEmpty()) {
            return List.of("The table that this joint is to be judged by is not known here.");
        }
        if (verdict().isEmpty()) {
            return List.of("Touch every colour that the weld shows.");
        }
        List<String> lines = new ArrayList<>();
        lines.add(table.get().title() + " " + switch (verdict().orElseThrow()) {
            case ColourVerdict.Accept ignored -> "accepts these colours.";
            case ColourVerdict.Conditional some -> "accepts " + names(some.colours()) + " on a condition: "
                    + String.join("; ", some.next()) + ".";
            case ColourVerdict.Reject some -> "rejects " + names(some.colours()) + ". Next: "
                    + String.join("; ", some.next()) + ".";
        });
        kinds().forEach(kind -> lines.add(kind.name() + (kind.ruling() == Ruling.REJECT ? " rejects it. Next: "
                : ": its size decides. ") + kind.next().orElse("") + "."));
        return lines;
    }

    /**
     * What is sent with {@code verdict}.
     *
     * @throws IllegalArgumentException naming what is missing or has a wrong form
     */
    Judging judging(Verdict verdict, String lux, String lightMeter, String remark) {
        if (weld.isEmpty()) {
            throw new IllegalArgumentException("touch every colour that the weld shows");
        }
        boolean before = beforeBrushing.orElseThrow(() ->
                new IllegalArgumentException("say whether it was looked at before anything was brushed"));
        List<FindingNote> notes = findings.entrySet().stream()
                .map(entry -> new FindingNote(entry.getKey(), entry.getValue())).toList();
        return new Judging(verdict, new ColoursSeen(before, List.copyOf(weld), band), notes,
                new Lighting(number(lux), meter(lightMeter)), photographs(),
                Optional.of(remark.strip()).filter(text -> !text.isEmpty()));
    }

    private static BigDecimal number(String lux) {
        try {
            return new BigDecimal(lux.strip().replace(',', '.'));
        } catch (NumberFormatException none) {
            throw new IllegalArgumentException("light: measure it and type the lux", none);
        }
    }

    private static SupplyId meter(String label) {
        if (label.isBlank()) {
            throw new IllegalArgumentException("light meter: scan or type its label");
        }
        return new SupplyId(label.strip().toUpperCase(Locale.ROOT));
    }

    private Optional<ColourVerdict> verdict() {
        return table.filter(known -> !weld.isEmpty()).map(known ->
                ColourRules.judge(known, new ColoursSeen(true, List.copyOf(weld), band)));
    }

    private List<FindingKind> kinds() {
        return findings.keySet().stream().flatMap(key -> scale.finding(key).stream()).toList();
    }

    private String names(List<String> colours) {
        return colours.stream().map(key -> scale.colour(key).map(WeldColour::name).orElse(key)
                .toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
    }
}
