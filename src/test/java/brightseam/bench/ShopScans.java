package brightseam.bench;

import brightseam.bins.shell.Bins;
import brightseam.browser.ShopServer;
import brightseam.demo.Crew;
import brightseam.demo.DemoPerson;
import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Outcome;
import brightseam.scan.OwnLabel;
import brightseam.scan.RawScan;
import brightseam.scan.ScanParser;
import brightseam.scan.ScanReading;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.TravellerActions;
import brightseam.traveller.shell.Travellers;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Scans as the bench does them, on the server: from the symbol's text to the verdict. Out of a hundred, 60 are
 * travellers in work, 20 bins that something lies in, 10 travellers of long ago, and 10 a bin of a wrong class, whose
 * refusal is put on disk before the verdict is given.
 */
final class ShopScans implements Tablets.Scans {

    private static final LocalDate TODAY = LocalDate.of(2030, 1, 1);

    private final ScanParser parser = ScanParser.standard();
    private final Travellers travellers;
    private final TravellerActions actions;
    private final ShopClock clock;
    private final Actor actor;
    private final BinId wrongBin;
    private final List<TravellerId> inWork;
    private final List<TravellerId> ofLongAgo;
    private final List<BinId> bins;

    ShopScans(ShopServer shop, List<TravellerId> inWork, List<TravellerId> ofLongAgo, BinId wrongBin) {
        this.travellers = shop.bean(Travellers.class);
        this.actions = shop.bean(TravellerActions.class);
        this.clock = shop.bean(ShopClock.class);
        this.actor = shop.bean(Crew.class).actor(DemoPerson.ILKA_FERROW);
        this.wrongBin = wrongBin;
        this.inWork = inWork;
        this.ofLongAgo = ofLongAgo;
        Bins register = shop.bean(Bins.class);
        this.bins = inWork.stream().map(register::whereIs).flatMap(Optional::stream).distinct().toList();
    }

    @Override
    public boolean scan(SplittableRandom chance) {
        int kind = chance.nextInt(100);
        if (kind < 60) {
            show(read(OwnLabel.of(any(inWork, chance))).traveller().flatMap(travellers::find).orElseThrow());
        } else if (kind < 80) {
            List<Card> inside = travellers.inBin(read(OwnLabel.of(any(bins, chance))).bin().orElseThrow());
            inside.forEach(this::show);
        } else if (kind < 90) {
            show(read(OwnLabel.of(any(ofLongAgo, chance))).traveller().flatMap(travellers::find).orElseThrow());
        } else {
            refuse(any(inWork, chance));
            return true;
        }
        return false;
    }

    private void show(Card card) {
        if (card.next() == null || card.missing(clock.now()) == null) {
            throw new IllegalStateException("no card for " + card.id());
        }
    }

    private void refuse(TravellerId traveller) {
        BinId bin = read(OwnLabel.of(wrongBin)).bin().orElseThrow();
        if (!(actions.putInBin(actor, List.of(traveller), bin) instanceof Outcome.Refused)) {
            throw new IllegalStateException(traveller + " should not go into " + bin);
        }
    }

    private OwnLabel read(OwnLabel label) {
        ScanReading reading = parser.parse(RawScan.wedge(label.payload()), TODAY);
        return reading instanceof OwnLabel read ? read : label;
    }

    private static <T> T any(List<T> from, SplittableRandom chance) {
        return from.get(chance.nextInt(from.size()));
    }
}
