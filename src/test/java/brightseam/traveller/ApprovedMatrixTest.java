package brightseam.traveller;

import static java.time.Duration.ofHours;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.procedure.BinClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every command in every representative state: accepted with which events, or refused by which rules. The answers lie
 * in a file that is read as a table of the rules; after a change of rules {@code mvn test -Dtest=ApprovedMatrixTest
 * -Dapprove=true} writes it anew, and the difference is reviewed line by line.
 */
class ApprovedMatrixTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved/traveller-matrix.txt");

    @Test
    void every_command_in_every_state_is_answered_as_approved() throws IOException {
        List<String> lines = new ArrayList<>();
        states().forEach((name, shop) -> {
            lines.add("## " + name);
            commands().forEach((ask, command) -> lines.add(ask + ": " + answer(shop, command)));
        });
        if (Boolean.getBoolean("approve")) {
            Files.write(APPROVED, lines);
        }
        assertEquals(String.join("\n", Files.readAllLines(APPROVED)), String.join("\n", lines));
    }

    @Test
    void the_matrix_asks_every_command() {
        Shop shop = Shop.withLot();
        Set<String> asked = commands().values().stream().map(command -> command.apply(shop).getClass().getSimpleName())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = Stream.of(TravellerCommand.class, TravellerCommand.OfChamber.class)
                .flatMap(type -> Stream.of(type.getPermittedSubclasses())).filter(Class::isRecord)
                .map(Class::getSimpleName).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, asked);
    }

    private static String answer(Shop shop, Function<Shop, TravellerCommand> command) {
        return switch (TravellerDecider.decide(
                Optional.of(shop.traveller()), shop.procedure, command.apply(shop))) {
            case Decision.Accepted<TravellerEvent> accepted -> "-> " + accepted.events().stream()
                    .map(event -> event.getClass().getSimpleName()).collect(Collectors.joining(" "));
            case Decision.Refused<TravellerEvent> refused -> "refused " + refused.refusals().stream()
                    .map(Refusal::code).collect(Collectors.joining(" "));
        };
    }

    private static Map<String, Shop> states() {
        Map<String, Shop> states = new LinkedHashMap<>();
        states.put("released", Shop.withLot());
        states.put("cutting", Shop.withLotAt("cut").does(ask -> ask.start("cut")));
        states.put("at the inspection point", Shop.withLotAt("dimension"));
        states.put("bath not read yet", Shop.withLotAt("pickle").does(ask -> ask.start("pickle")));
        states.put("bath read", bathRead());
        states.put("in the acid", inAcid().passes(ofMinutes(2)));
        states.put("too long in the acid", inAcid().passes(ofMinutes(4)));
        states.put("out of the acid", outOfAcid());
        states.put("gap missed", outOfAcid().passes(ofMinutes(2)));
        states.put("rinsing unsigned acid", outOfAcid().does(ask -> ask.start("acid-rinse")).passes(ofMinutes(3)));
        states.put("before the wipe", Shop.withLotAt("wipe"));
        states.put("clean", Shop.withLotAt("white-cloth"));
        states.put("clean, window run out", Shop.withLotAt("white-cloth").passes(ofHours(200)));
        states.put("bagging, bag open", Shop.withLotAt("bagging").does(ask -> ask.start("bagging")));
        states.put("bagging, gloves spent", Shop.withLotAt("bagging").does(ask -> ask.start("bagging"))
                .does(ask -> ask.glovesSpent("the tablet")));
        states.put("ready", Shop.withLotAt("pass-in"));
        states.put("at the lock", Shop.withLotAt("pass-in").does(ask -> ask.start("pass-in")));
        states.put("passed in", Shop.withLotAt("weld"));
        states.put("welded", Shop.withLotAt("final-review"));
        states.put("in quarantine", Shop.withLotAt("final-review").does(ask -> ask.report(1, 2)));
        states.put("closed", Shop.withLot().goesOnToTheEnd());
        states.put("scrapped", Shop.withLotAt("cut").does(ask -> ask.report(1, 2, 3, 4))
                .does(ask -> ask.decide(1, Disposition.SCRAP, Commands.LEAD)));
        inSession(states);
        return states;
    }

    private static void inSession(Map<String, Shop> states) {
        states.put("session: ready", session("pass-in"));
        states.put("session: in the chamber", session("weld"));
        states.put("session: window over inside", session("weld").passes(ofHours(200)));
        states.put("session: arc burning", arc());
        states.put("session: joint welded", arc().does(ask -> Inside.good(ask, "J03", 1)));
        states.put("session: joint with an excursion", arc().does(ask -> Inside.exceeded(ask, "J03", 1)));
        states.put("session: welding signed", session("weld-inspection"));
        states.put("session: closed", Shop.withLot(TestProcedures.welded()).goesOnToTheEnd());
    }

    private static Shop session(String step) {
        return Shop.withLot(TestProcedures.welded()).goesOnTo(step);
    }

    private static Shop arc() {
        return session("weld").does(ask -> Inside.arc(ask, "J03", 1)).passes(ofSeconds(20));
    }

    private static Shop bathRead() {
        return Shop.withLotAt("pickle").does(ask -> ask.start("pickle"))
                .does(ask -> ask.read("pickle", "acid-temperature", "30"));
    }

    private static Shop inAcid() {
        return bathRead().does(ask -> ask.beginHold("pickle"));
    }

    private static Shop outOfAcid() {
        return inAcid().passes(ofMinutes(2)).does(ask -> ask.endHold("pickle"));
    }

    private static Map<String, Function<Shop, TravellerCommand>> commands() {
        Map<String, Function<Shop, TravellerCommand>> commands = new LinkedHashMap<>();
        commands.put("release", shop -> shop.ask.release("T-1042", 4, "9", false));
        for (BinClass binClass : BinClass.values()) {
            commands.put("put into " + binClass, shop -> shop.ask.put("B-9", binClass));
        }
        commands.put("close bin", shop -> shop.ask.close());
        commands.put("open bin", shop -> shop.ask.open());
        commands.put("start step", shop -> shop.ask.start(step(shop)));
        commands.put("enter late", shop -> shop.ask.enterLate(step(shop), java.time.Duration.ZERO, Commands.LEAD));
        commands.put("start acid rinse", shop -> shop.ask.start("acid-rinse"));
        commands.put("begin hold", shop -> shop.ask.beginHold(step(shop)));
        commands.put("end hold", shop -> shop.ask.endHold(step(shop)));
        commands.put("cut hold short", shop -> shop.ask.cutHoldShort(step(shop)));
        commands.put("read", shop -> shop.ask.read(step(shop), reading(shop), "1"));
        commands.put("correct", shop -> shop.ask.correct("cut", "length", "99.7", Commands.LEAD));
        commands.put("sign", shop -> shop.ask.sign(step(shop), Commands.LEAD));
        commands.put("sign cut", shop -> shop.ask.sign("cut", Commands.LEAD));
        commands.put("stamp", shop -> shop.ask.stamp(step(shop), Commands.INSPECTOR));
        commands.put("reject", shop -> shop.ask.reject(step(shop), Commands.INSPECTOR, 1));
        commands.put("report touch", shop -> shop.ask.touch("bare hand"));
        commands.put("report gloves spent", shop -> shop.ask.glovesSpent("the tablet"));
        commands.put("change gloves", shop -> shop.ask.changeGloves("clean-room"));
        commands.put("report nonconformance", shop -> shop.ask.report(1));
        commands.put("mark suspect", shop -> shop.ask.suspect("pickle", Commands.LEAD));
        commands.put("rework to wipe", shop -> shop.ask.rework(1, "wipe", Commands.LEAD));
        for (Disposition disposition : List.of(Disposition.REPAIR, Disposition.USE_AS_IS, Disposition.SCRAP)) {
            commands.put("decide " + disposition, shop -> shop.ask.decide(1, disposition, Commands.INSPECTOR));
        }
        commands.put("set apart", shop -> shop.ask.setApart("T-1042.1", 1));
        commands.put("take out a piece", shop -> shop.ask.takeOut(
                "T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 1));
        commands.put("take out the lot", shop -> shop.ask.takeOut(
                "T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 1, 2, 3, 4));
        inChamber(commands);
        commands.put("watch", shop -> shop.ask.watch());
        commands.put("note refusal", shop -> new TravellerCommand.NoteRefusal(shop.ask.by(Commands.LEAD), "sign",
                List.of(new TravellerRefusal.ReasonMissing())));
        return commands;
    }

    private static void inChamber(Map<String, Function<Shop, TravellerCommand>> commands) {
        commands.put("enter chamber", shop -> Inside.enter(shop.ask));
        commands.put("note lock pass", shop -> Inside.lockPass(shop.ask));
        commands.put("begin arc", shop -> Inside.arc(shop.ask, "J04", 1));
        commands.put("note joint", shop -> Inside.exceeded(shop.ask, "J03", 1));
        commands.put("judge joint", shop -> Inside.judged(shop.ask, "J03", 1, Commands.INSPECTOR, false));
        commands.put("sign welding", shop -> Inside.sign(shop.ask, Commands.FABRICATOR));
    }

    private static String step(Shop shop) {
        return shop.traveller().currentStep().map(Object::toString).orElse("final-review");
    }

    private static String reading(Shop shop) {
        return shop.procedure.step(new brightseam.kernel.StepId(step(shop))).readings().stream()
                .findFirst().map(spec -> spec.id()).orElse("none");
    }
}
