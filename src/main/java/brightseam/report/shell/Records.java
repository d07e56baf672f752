package brightseam.report.shell;

import brightseam.kernel.BadgeId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.Flaw;
import brightseam.ledger.StreamName;
import brightseam.material.Heat;
import brightseam.material.shell.Heats;
import brightseam.people.Person;
import brightseam.people.shell.People;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLibrary;
import brightseam.report.Approval;
import brightseam.report.HeatDetails;
import brightseam.report.Lookups;
import brightseam.report.OxygenReadings;
import brightseam.report.RecordedLine;
import brightseam.report.SealedWith;
import brightseam.report.TravellerDocument;
import brightseam.report.Who;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.traveller.shell.Travellers;
import brightseam.words.Wording;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;

/** The record of a traveller as document, PDF and CSV. */
@Service
public class Records {

    private final Travellers travellers;
    private final ProcedureLibrary procedures;
    private final Vocabulary vocabulary;
    private final People people;
    private final Heats heats;
    private final Wording wording;
    private final Supplies supplies;
    private final OxygenReadings readings;
    private final ShopClock clock;

    Records(Travellers travellers, ProcedureLibrary procedures, Vocabulary vocabulary, People people, Heats heats,
            Wording wording, Supplies supplies, StoredReadings readings, ShopClock clock) {
        this.travellers = travellers;
        this.procedures = procedures;
        this.vocabulary = vocabulary;
        this.people = people;
        this.heats = heats;
        this.wording = wording;
        this.supplies = supplies;
        this.readings = readings;
        this.clock = clock;
    }

    /** The record as it stands; every hash is derived anew. Empty where there is no such traveller. */
    public Optional<TravellerDocument> document(TravellerId id) {
        return travellers.find(id).map(card -> document(card, travellers.record(id)));
    }

    /** The record as PDF on A4, said to be printed by {@code printedBy}. Empty where there is no such traveller. */
    public Optional<byte[]> pdf(TravellerId id, String printedBy) {
        return document(id).map(document -> new RecordPaper(document, ZoneId.systemDefault(),
                vocabulary.safetyNotice()).print(clock.now(), printedBy));
    }

    /** {@code document} as PDF on A4, printed by {@code printedBy}, naming the file of evidence that goes with it. */
    public byte[] pdf(TravellerDocument document, SealedWith evidence, String printedBy) {
        return new RecordPaper(document, ZoneId.systemDefault(), vocabulary.safetyNotice(), Optional.of(evidence))
                .print(clock.now(), printedBy);
    }

    /** Every entry of the record as CSV, hashes included, so that anybody can derive them anew. */
    public Optional<String> csv(TravellerId id) {
        return travellers.find(id).map(card -> EntryCsv.write(travellers.record(id)));
    }

    /** The joints of the record as CSV, a line for each stretch of each run, with the last verdict. */
    public Optional<String> jointsCsv(TravellerId id) {
        return document(id).map(JointCsv::write);
    }

    private Map<String, LocalDate> lastDays() {
        return supplies.all().stream().filter(supply -> supply.lastDay().isPresent())
                .collect(Collectors.toMap(supply -> supply.id().value(), supply -> supply.lastDay().orElseThrow()));
    }

    private TravellerDocument document(Card card, List<RecordedEvent> record) {
        ProcedureRef ref = card.procedure().ref();
        Map<BadgeId, String> names = people.all().stream().collect(Collectors.toMap(Person::badge, Person::name));
        Optional<Approval> approval = procedures.history(ref.id()).stream()
                .filter(approved -> approved.ref().equals(ref)).findFirst()
                .map(approved -> new Approval(new Who(approved.origin().by(),
                        names.getOrDefault(approved.origin().by(), approved.origin().by().value())),
                        approved.origin().at()));
        Lookups lookups = new Lookups(names, heats.find(card.traveller().heat()).map(found -> details(found.state())),
                approval, vocabulary, wording, lastDays(), readings);
        List<RecordedLine> lines = record.stream()
                .map(told -> new RecordedLine(told.entry().version(), told.entry().hash(), told.event())).toList();
        return TravellerDocument.of(lines, card.procedure(), lookups, flaw(record));
    }

    private static HeatDetails details(Heat heat) {
        return new HeatDetails(heat.id().value(), heat.grade(), heat.form(), heat.dimensions(), heat.maker(),
                heat.certificateNumber(), heat.receivedAt(), heat.holdReason());
    }

    private static Optional<String> flaw(List<RecordedEvent> record) {
        StreamName stream = record.getFirst().entry().stream();
        List<Entry> entries = record.stream().map(RecordedEvent::entry).toList();
        return ChainVerifier.verifyStream(stream, entries).map(Records::words);
    }

    private static String words(Flaw flaw) {
        return switch (flaw) {
            case Flaw.PositionBroken broken -> "an entry is out of its place in the ledger, at position "
                    + broken.position();
            case Flaw.StreamBroken broken -> "an entry of " + broken.found() + " stands in this record";
            case Flaw.VersionBroken broken -> "entry " + broken.expected() + " is missing; " + broken.found()
                    + " stands in its place";
            case Flaw.TypeBroken broken -> "the entry at position " + broken.position() + " has no proper type";
            case Flaw.PreviousBroken broken -> "entry " + broken.version() + " does not follow from the one before it";
            case Flaw.HashBroken broken -> "entry " + broken.version() + " was changed after it was written";
        };
    }
}
