package brightseam.browser;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.bins.Bin;
import brightseam.bins.Fitness;
import brightseam.bins.shell.Bins;
import brightseam.demo.DemoPerson;
import brightseam.demo.Story;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.DemoClock;
import brightseam.people.PersonCommand;
import brightseam.people.Role;
import brightseam.people.shell.People;
import brightseam.procedure.BinClass;
import brightseam.procedure.Vocabulary;
import brightseam.supply.shell.Supplies;
import brightseam.traveller.NextAction;
import brightseam.traveller.Traveller;
import brightseam.traveller.Window;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.LiveTravellers;
import brightseam.traveller.shell.RecordedEvent;
import brightseam.traveller.shell.Travellers;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The demo shop on one working day, and what may be known about it besides what the screens show. */
final class Shift implements AutoCloseable {

    private final ShopServer server = ShopServer.demo("--brightseam.demo-old-procedures=true",
            "--brightseam.scanner-burst-millis=900", "--brightseam.scanner-idle-millis=1000");

    ShopServer server() {
        return server;
    }

    /** Whoever it is, signed in at a tablet of the own. */
    ShopTablet tablet(DemoPerson person, String name) {
        return new ShopTablet(server.url(), name).signIn(person.badge().value(), person.pin());
    }

    Traveller traveller(TravellerId id) {
        return server.bean(Travellers.class).find(id).orElseThrow().traveller();
    }

    /** The only traveller that is on its way and of which {@code wanted} holds. */
    TravellerId only(Predicate<Card> wanted) {
        List<Card> found = server.bean(LiveTravellers.class).all().stream().filter(wanted).toList();
        assertThat(found).hasSize(1);
        return found.getFirst().id();
    }

    /** Its events' types, in order. */
    List<String> record(TravellerId id) {
        return server.bean(Travellers.class).record(id).stream().map(RecordedEvent::entry)
                .map(entry -> entry.type().replaceFirst("[.]1$", "")).toList();
    }

    /** Lets shop time pass. */
    void pass(Duration time) {
        server.bean(DemoClock.class).skip(time);
    }

    /** Lets shop time pass until the clean window of {@code id} has run out. */
    void passWindow(TravellerId id) {
        Window.Open window = (Window.Open) traveller(id).window();
        pass(window.remaining(server.bean(DemoClock.class).now()).plusSeconds(1));
    }

    /** Somebody else does everything on {@code id} until {@code enough} is to be done. */
    void othersWork(TravellerId id, Predicate<NextAction> enough) {
        server.bean(Story.class).advance(List.of(id), enough);
    }

    /** An empty bin of each class that takes parts of any size, as the card names the class. */
    Map<String, String> emptyBins() {
        Collection<Bin> all = server.bean(Bins.class).all();
        return Map.of("shop bin", BinClass.SHOP_BIN, "process basket", BinClass.PROCESS_BASKET,
                        "clean bin", BinClass.CLEAN_BIN, "sealed bag", BinClass.SEALED_BAG).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> all.stream()
                        .filter(bin -> bin.binClass() == entry.getValue() && bin.inside().isEmpty() && !bin.closed()
                                && bin.fitness() == Fitness.FIT && !bin.capacity().asksForSizes())
                        .map(bin -> bin.id().value()).reduce((one, later) -> later).orElseThrow()));
    }

    /** Something fit of each type of supply, by what the card calls the type. */
    Map<String, String> supplies() {
        Map<String, Vocabulary.SupplyType> types = server.bean(Vocabulary.class).supplies();
        LocalDate today = Supplies.day(server.bean(DemoClock.class).now());
        return server.bean(Supplies.class).all().stream()
                .filter(supply -> supply.standing().isUsable() && !supply.isPast(today)
                        && supply.contamination().isEmpty())
                .collect(Collectors.toMap(supply -> types.get(supply.type()).name(), supply -> supply.id().value(),
                        (one, other) -> one));
    }

    /** A second inspector, with a stamp. */
    void inspector(String badge, String name, String pin, String stamp) {
        People people = server.bean(People.class);
        Origin office = new Origin(server.bean(DemoClock.class).now(), DemoPerson.ODA_MARSH.badge(), "office", true);
        BadgeId id = new BadgeId(badge);
        people.run(new PersonCommand.Register(office, id, name, List.of(Role.INSPECTOR)));
        people.setPin(new Origin(office.at(), id, "office", true), id, pin);
        people.run(new PersonCommand.IssueStamp(office, id, stamp));
    }

    @Override
    public void close() {
        server.close();
    }
}
