package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.procedure.Step;
import brightseam.report.Pass.Late;
import brightseam.report.Pass.Stay;
import brightseam.report.Pass.Superseded;
import brightseam.report.ReadingLine.Correction;
import brightseam.traveller.Contact;
import brightseam.traveller.Placement;
import brightseam.traveller.TravellerEvent.ReadingTaken;
import brightseam.traveller.TravellerEvent.StepStarted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A pass while it is being told. */
final class DraftPass {

    private final int number;
    private final Step step;
    private final StepStarted start;
    private final Lookups lookups;
    private final List<Stay> bins = new ArrayList<>();
    private final List<Contact> contacts = new ArrayList<>();
    private final List<ReadingLine> readings = new ArrayList<>();
    private Optional<GapTaken> gap = Optional.empty();
    private Optional<HoldTaken> hold = Optional.empty();
    private Optional<Mark> mark = Optional.empty();
    private Optional<Superseded> superseded = Optional.empty();
    private Optional<Late> late = Optional.empty();
    private String remark = "";
    private boolean gapMet;

    DraftPass(int number, Step step, StepStarted start, Lookups lookups) {
        this.number = number;
        this.step = step;
        this.start = start;
        this.lookups = lookups;
    }

    int number() {
        return number;
    }

    /** Whether it is neither signed nor superseded. */
    boolean isOpen() {
        return mark.isEmpty() && superseded.isEmpty();
    }

    boolean counts() {
        return superseded.isEmpty();
    }

    void lies(Placement where) {
        bins.add(new Stay(where.bin(), where.binClass()));
    }

    void touched(List<Contact> made) {
        contacts.addAll(made);
    }

    void enteredLate(Late stated) {
        late = Optional.of(stated);
    }

    void gap(GapTaken taken) {
        gap = Optional.of(taken);
    }

    void holdBegun(Moment at, Who by) {
        hold = step.hold().map(limits -> new HoldTaken(limits, at, by, Optional.empty(), Optional.empty()));
    }

    void holdEnded(Moment at, Who by) {
        hold = hold.map(begun -> new HoldTaken(begun.limits(), begun.begunAt(), begun.begunBy(), Optional.of(at),
                Optional.of(by)));
    }

    void read(ReadingTaken e) {
        step.readings().stream().filter(spec -> spec.id().equals(e.reading())).findFirst().ifPresent(spec -> {
            readings.replaceAll(line -> line.spec().equals(spec) ? repeated(line) : line);
            readings.add(new ReadingLine(spec, lookups.vocabulary().symbol(spec), e.value(),
                    e.inLimits(), lookups.who(e.by()), e.at(), false, List.of()));
        });
    }

    void correct(String reading, Correction correction) {
        for (int i = readings.size() - 1; i >= 0; i--) {
            ReadingLine line = readings.get(i);
            if (line.spec().id().equals(reading)) {
                List<Correction> all = new ArrayList<>(line.corrections());
                all.add(correction);
                readings.set(i, new ReadingLine(line.spec(), line.symbol(), line.value(), line.inLimits(), line.by(),
                        line.at(), line.repeated(), all));
                return;
            }
        }
    }

    void signed(Mark by, String words) {
        mark = Optional.of(by);
        remark = words;
    }

    void supersede(Superseded why) {
        superseded = Optional.of(why);
    }

    /** When the gap behind it began to run; empty where it does not run any more. */
    Optional<Moment> gapRunsSince() {
        if (gapMet || step.gap().isEmpty()) {
            return Optional.empty();
        }
        return step.hold().isPresent() ? hold.flatMap(HoldTaken::endedAt) : mark.map(Mark::at);
    }

    void gapIsMet() {
        gapMet = true;
    }

    Pass done() {
        List<String> cautions = start.cautionsRead()
                ? step.cautions().stream().map(lookups::caution).toList() : List.of();
        return new Pass(number, start.at(), lookups.who(start.by()), tablet(), start.station(), bins,
                start.gloves().map(lookups::gloves), cautions, start.loadWith(), contacts, gap, hold, readings, mark,
                remark, superseded, late);
    }

    /** The tablet, and how the station's label came in where it was not read by a scanner. */
    private String tablet() {
        return start.origin().tablet() + start.origin().label().map(entry -> switch (entry) {
            case SCANNED -> "";
            case CAMERA -> ", label read by camera";
            case TYPED -> ", label typed";
        }).orElse("");
    }

    private static ReadingLine repeated(ReadingLine line) {
        return new ReadingLine(line.spec(), line.symbol(), line.value(), line.inLimits(), line.by(), line.at(), true,
                line.corrections());
    }
}
