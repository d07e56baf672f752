package brightseam.traveller.shell;

import brightseam.kernel.BinId;
import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Refusal;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import java.util.List;

/** What the shop's registers refuse before a traveller's own rules are asked. */
public sealed interface ShopRefusal extends Refusal {

    /** No such traveller. */
    record TravellerUnknown(TravellerId traveller) implements ShopRefusal {
        @Override public String code() { return "traveller-unknown"; }
    }

    /** No such bin. */
    record BinNotRegistered(BinId bin) implements ShopRefusal {
        @Override public String code() { return "bin-not-registered"; }
    }

    /** A closed bin is emptied as a whole on the way into the chamber; {@code staying} would be left in it, open. */
    record OthersInBin(BinId bin, List<TravellerId> staying) implements ShopRefusal {
        @Override public String code() { return "others-in-bin"; }
    }

    /** No such station. */
    record StationUnknown(StationId station) implements ShopRefusal {
        @Override public String code() { return "station-not-registered"; }
    }

    /** No such heat. */
    record HeatUnknown(HeatId heat) implements ShopRefusal {
        @Override public String code() { return "heat-not-registered"; }
    }

    /** No such kit, or it is closed. */
    record KitNotOpen(KitId kit) implements ShopRefusal {
        @Override public String code() { return "kit-not-open"; }
    }

    /** No revision of the procedure is approved. */
    record NoApprovedRevision(String procedure) implements ShopRefusal {
        @Override public String code() { return "no-approved-revision"; }
    }

    /** None of {@code stations}, of a class that the pieces must not wait for after a soak, is fit now. */
    record NoFitTankAfter(String stationClass, List<StationId> stations) implements ShopRefusal {
        @Override public String code() { return "no-fit-tank-after"; }
    }

    /** What was signed is not what the signer had read: something was stored meanwhile. */
    record ContentChanged(TravellerId traveller) implements ShopRefusal {
        @Override public String code() { return "content-changed"; }
    }
}
