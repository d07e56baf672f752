package brightseam.traveller;

import brightseam.kernel.Refusal;
import brightseam.kernel.StepId;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.Procedure;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whole records for those who read them: everything that can happen to a lot, once. */
public final class Stories {

    private Stories() {}

    /** The short procedure that the stories follow. */
    public static Procedure procedure() {
        return TestProcedures.tube();
    }

    /** Who inspects in the stories. */
    public static Signer inspector() {
        return Commands.INSPECTOR;
    }

    /** The first step is entered an hour after it was done. */
    public static List<TravellerEvent> enteredLate() {
        return Shop.withLotAt("cut").passes(java.time.Duration.ofHours(5))
                .does(ask -> ask.enterLate("cut", java.time.Duration.ofHours(1), Commands.FABRICATOR)).record();
    }

    /** The good way from the release to the last stamp. */
    public static List<TravellerEvent> closed() {
        return Shop.withLot().goesOnToTheEnd().record();
    }

    /**
     * A lot that waits for its final review after a wrong bin, an overrun pickle that was used as it was, a corrected
     * reading, a missed gap, a rejected piece that was set apart, and a touch.
     *
     * @param remark what the inspector wrote about the rejected piece's mates, and the touch's words
     */
    public static List<TravellerEvent> troubled(String remark) {
        return troubledShop(remark).record();
    }

    /** A lot with one piece rejected at the dimensional inspection. */
    public static List<TravellerEvent> rejected() {
        return Shop.withLotAt("dimension").does(ask -> ask.start("dimension"))
                .does(ask -> ask.reject("dimension", Commands.INSPECTOR, 3)).record();
    }

    /** A lot at its dimensional inspection, not begun. */
    public static List<TravellerEvent> toInspect() {
        return Shop.withLotAt("dimension").record();
    }

    /** A clean lot, window open, about which something was reported. */
    public static List<TravellerEvent> reportedWhileClean() {
        return Shop.withLotAt("white-cloth").does(ask -> ask.report(1)).record();
    }

    /** The piece that was set apart from the troubled lot. */
    public static List<TravellerEvent> apart() {
        Shop shop = Shop.withLotAt("dimension");
        shop.does(ask -> ask.start("dimension"))
                .does(ask -> ask.reject("dimension", Commands.INSPECTOR, 3));
        return shop.does(ask -> ask.setApart("T-1042.1", 3)).child()
                .does(ask -> ask.decide(1, Disposition.SCRAP, Commands.INSPECTOR)).record();
    }

    private static Shop troubledShop(String remark) {
        Shop shop = Shop.withLotAt("degrease").does(ask -> ask.put("B-0300", BinClass.PROCESS_BASKET));
        shop.when(ask -> ask.put("B-0142", BinClass.CLEAN_BIN));
        refused(shop, "put in bin");
        shop.goesOnTo("pickle").does(ask -> ask.start("pickle"))
                .does(ask -> ask.read("pickle", "acid-temperature", "42"))
                .does(ask -> ask.read("pickle", "acid-temperature", "32.5"))
                .does(ask -> ask.correct("pickle", "acid-temperature", "35.2", Commands.FABRICATOR))
                .does(ask -> ask.beginHold("pickle"));
        shop.passes(Duration.ofSeconds(20)).when(ask -> ask.endHold("pickle"));
        refused(shop, "end hold");
        shop.passes(Duration.ofMinutes(4)).does(ask -> ask.endHold("pickle")).passes(Duration.ofSeconds(95))
                .does(ask -> ask.start("acid-rinse")).passes(Duration.ofMinutes(2))
                .does(ask -> ask.endHold("acid-rinse"))
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR))
                .does(ask -> ask.rework(2, "degrease", Commands.LEAD));
        shop.goesOnTo("white-cloth").passes(Duration.ofMinutes(25)).does(ask -> ask.touch(remark));
        return shop.goesOnTo("final-review");
    }

    private static void refused(Shop shop, String attempt) {
        List<Refusal> why = shop.refusals();
        shop.does(ask -> new TravellerCommand.NoteRefusal(ask.by(Commands.FABRICATOR), attempt, why));
    }

    /** A closed lot that something at {@code step} puts under suspicion. */
    public static List<TravellerEvent> suspectAt(String step, String reason) {
        return Shop.withLot().goesOnToTheEnd().does(ask -> new TravellerCommand.MarkSuspect(ask.by(Commands.LEAD),
                Optional.of(new StepId(step)), reason, Commands.LEAD)).record();
    }

    /** The records of every lot of a random shift, by label; the same seed gives the same shift. */
    public static Map<String, List<TravellerEvent>> shift(long seed) {
        return new RandomShift(seed).run(400).records;
    }

    /** A piece that was taken out of the acid before its minimum, into another basket, and rinsed there. */
    public static List<TravellerEvent> takenOut() {
        Shop lot = Shop.withLotAt("pickle").does(ask -> ask.put("B-9", BinClass.PROCESS_BASKET))
                .does(ask -> ask.start("pickle")).does(ask -> ask.read("pickle", "acid-temperature", "30"))
                .does(ask -> ask.beginHold("pickle")).passes(Duration.ofSeconds(40))
                .does(ask -> ask.takeOut("T-1042.1", BinClass.PROCESS_BASKET, Commands.FABRICATOR, 2));
        return lot.child().does(ask -> ask.start("acid-rinse")).record();
    }

    /** The procedure that the stories of the chamber follow. */
    public static Procedure welded() {
        return TestProcedures.welded();
    }

    /**
     * A lot that was passed in through the lock; joint J03 of pieces 1 and 2 in order, J04 of piece 3 with too much
     * oxygen and used as it was, J05 of piece 4 rejected by its colour, cleaned, welded again and accepted; closed.
     */
    public static List<TravellerEvent> inTheChamber() {
        Shop shop = Shop.withLot(TestProcedures.welded()).goesOnTo("weld").does(Inside::lockPass);
        shop.does(ask -> Inside.arc(ask, "J03", 1, 1, 2)).passes(Duration.ofSeconds(20))
                .does(ask -> Inside.toTheEndOfTheArc(ask, "J03", 1, 1, 2))
                .does(ask -> Inside.good(ask, "J03", 1, 1, 2));
        shop.does(ask -> Inside.arc(ask, "J04", 1, 3)).passes(Duration.ofSeconds(20))
                .does(ask -> Inside.exceeded(ask, "J04", 1, 3))
                .does(ask -> ask.decide(1, Disposition.USE_AS_IS, Commands.INSPECTOR));
        joint(shop, "J05", 1, 4);
        shop.does(ask -> Inside.sign(ask, Commands.FABRICATOR)).passes(Duration.ofMinutes(30))
                .does(ask -> Inside.judged(ask, "J03", 1, Commands.INSPECTOR, true, 1, 2))
                .does(ask -> Inside.judged(ask, "J05", 1, Commands.INSPECTOR, false, 4))
                .does(ask -> ask.rework(2, "wipe", Commands.LEAD)).goesOnTo("weld");
        joint(shop, "J05", 2, 4);
        return shop.does(ask -> Inside.sign(ask, Commands.FABRICATOR))
                .does(ask -> Inside.judged(ask, "J05", 2, Commands.INSPECTOR, true, 4)).goesOnToTheEnd().record();
    }

    private static void joint(Shop shop, String joint, int run, Integer... pieces) {
        shop.does(ask -> Inside.arc(ask, joint, run, pieces)).passes(Duration.ofSeconds(20))
                .does(ask -> Inside.good(ask, joint, run, pieces));
    }

    /** The state that {@code events} make. */
    public static Optional<Traveller> state(List<TravellerEvent> events) {
        return Traveller.fold(events);
    }
}
