package brightseam.demo;

import brightseam.kernel.BinId;
import brightseam.kernel.Decision;
import brightseam.kernel.HeatId;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.shell.DemoClock;
import brightseam.line.StationCommand;
import brightseam.line.shell.Stations;
import brightseam.material.HeatCommand;
import brightseam.material.shell.Heats;
import brightseam.people.PersonCommand;
import brightseam.people.PersonEvent;
import brightseam.people.Qualification;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.People;
import brightseam.procedure.BinClass;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;

/** What the demo shop has: people, stations, bins, heats, parts and approved procedures. All invented. */
@Component
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
final class Registers {

    private static final Duration QUALIFIED_FOR = Duration.ofDays(300);
    /** From the filling of the registers to three days before the demo begins. */
    private static final Duration RUN_OUT_AFTER = DemoClock.HEAD_START.minusDays(3);
    private static final Set<String> NEEDS_QUALIFICATION = Set.of("pickle-tank", "transfer-lock");
    private static final String MILL = "Norrholm Titanium (invented)";
    private static final int SHOP_BINS = 16;
    private static final int BASKETS = 6;
    private static final int CLEAN_BINS = 8;
    private static final int BAGS = 24;

    private final FirstRun firstRun;
    private final People people;
    private final Stations stations;
    private final Heats heats;
    private final DemoProcedures procedures;
    private final Shelf shelf;
    private final DemoParts parts;
    private final Crew crew;

    Registers(FirstRun firstRun, People people, Stations stations, Heats heats, DemoProcedures procedures,
            Shelf shelf, DemoParts parts, Crew crew) {
        this.firstRun = firstRun;
        this.people = people;
        this.stations = stations;
        this.heats = heats;
        this.procedures = procedures;
        this.shelf = shelf;
        this.parts = parts;
        this.crew = crew;
    }

    /** Fills all of them, and has the procedures approved by the lead, older revisions first. */
    void fill() {
        people();
        stations();
        bins();
        heats();
        parts.fill();
        procedures.approveOld();
        procedures.approveNew();
    }

    private void people() {
        DemoPerson first = DemoPerson.ODA_MARSH;
        accepted(firstRun.open("server", firstRun.code(), first.badge(), first.fullName(), first.pin()));
        for (DemoPerson person : DemoPerson.values()) {
            if (person != first) {
                register(person);
            }
        }
    }

    private void register(DemoPerson person) {
        Origin origin = crew.origin(DemoPerson.ODA_MARSH);
        accepted(people.run(new PersonCommand.Register(
                origin, person.badge(), person.fullName(), List.of(person.role()))));
        accepted(people.setPin(crew.origin(person), person.badge(), person.pin()));
        person.stamp().ifPresent(stamp ->
                accepted(people.run(new PersonCommand.IssueStamp(origin, person.badge(), stamp))));
        person.qualifications().forEach(word -> qualify(person, word, QUALIFIED_FOR));
        person.runOut().forEach(word -> qualify(person, word, RUN_OUT_AFTER));
    }

    private void qualify(DemoPerson person, String word, Duration holds) {
        Origin origin = crew.origin(DemoPerson.ODA_MARSH);
        accepted(people.run(new PersonCommand.GrantQualification(
                origin, person.badge(), new Qualification(word, origin.at().wall().plus(holds)))));
    }

    private void stations() {
        station("S-RECV-1", "receiving-bench", "Receiving bench");
        station("S-SAW-1", "saw", "Band saw");
        station("S-COPE-1", "cope-machine", "Tube notcher");
        station("S-DEBURR-1", "deburr-bench", "Deburr bench, window side");
        station("S-DEBURR-2", "deburr-bench", "Deburr bench, wall side");
        station("S-WIRE-1", "wire-bench", "Wire bench");
        station("S-INSP-1", "inspection-bench", "Inspection bench");
        station("S-DEGREASE-1", "degrease-tank", "Alkaline tank");
        station("S-RINSE-1", "rinse-tank", "Rinse behind the alkaline tank");
        station("S-RINSE-2", "rinse-tank", "Rinse beside the pickle tank");
        station("S-PICKLE-1", "pickle-tank", "Pickle tank");
        station("S-DI-1", "di-rinse-tank", "Deionised rinse");
        station("S-DRYER-1", "dryer", "Drying cabinet");
        station("S-DRYER-2", "dryer", "Drying cabinet, old");
        station("S-WIPE-1", "wipe-bench", "Wipe bench, left");
        station("S-WIPE-2", "wipe-bench", "Wipe bench, right");
        station("S-BAG-1", "bagging-bench", "Bagging bench");
        station("S-LOCK-1", "transfer-lock", "Transfer lock");
        station("S-CHAMBER-1", "chamber", "Argon chamber");
        Crew.done(stations.execute(new StationCommand.TakeOutOfUse(new StationId("S-DRYER-2"),
                "Fan leaves dust; waits for a new filter", crew.origin(DemoPerson.ODA_MARSH))));
    }

    private void station(String id, String stationClass, String title) {
        Crew.done(stations.execute(new StationCommand.RegisterStation(new StationId(id), stationClass, title,
                NEEDS_QUALIFICATION.contains(stationClass), crew.origin(DemoPerson.ODA_MARSH))));
    }

    private void bins() {
        add(101, SHOP_BINS, BinClass.SHOP_BIN);
        add(201, BASKETS, BinClass.PROCESS_BASKET);
        add(301, CLEAN_BINS, BinClass.CLEAN_BIN);
        add(401, BAGS, BinClass.SEALED_BAG);
    }

    private void add(int first, int count, BinClass binClass) {
        for (int number = first; number < first + count; number++) {
            shelf.add(new BinId("B-0" + number), binClass);
        }
    }

    private void heats() {
        heat(DemoHeat.LEG_TUBE, "9", "tube", "38.1 x 1.65 mm", "NT-88214");
        heat(DemoHeat.MAST_TUBE, "2", "tube", "25.4 x 1.25 mm", "NT-88377");
        heat(DemoHeat.FITTING_BAR, "5", "bar", "round 60 mm", "NT-87902");
        heat(DemoHeat.COLLAR_BAR, "23", "bar", "round 45 mm", "NT-88105");
        heat(DemoHeat.WIRE, "9", "wire", "1.6 mm", "NT-86630");
        heat(DemoHeat.HELD_TUBE, "9", "tube", "50.8 x 1.65 mm", "NT-88419");
        Crew.done(heats.execute(new HeatCommand.PutOnHold(DemoHeat.HELD_TUBE,
                "Certificate lacks the hydrogen value", crew.origin(DemoPerson.BRAM_ODUYA))));
    }

    private void heat(HeatId id, String grade, String form, String dimensions, String certificate) {
        Origin origin = crew.origin(DemoPerson.ODA_MARSH);
        Crew.done(heats.execute(new HeatCommand.RegisterHeat(
                id, grade, form, dimensions, MILL, certificate, origin.at().wall(), origin)));
    }

    private static void accepted(Decision<PersonEvent> decision) {
        if (decision instanceof Decision.Refused<PersonEvent> refused) {
            throw new IllegalStateException("refused: " + refused.refusals());
        }
    }
}
