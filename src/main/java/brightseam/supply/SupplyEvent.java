package brightseam.supply;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Origin;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What happened to one supply. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface SupplyEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which supply. */
    SupplyId supply();

    /** It came into the shop; see {@link Supply} for the parts. */
    record Registered(Origin origin, SupplyId supply, ContactKind kind, String type, String title, String lot,
            String maker, Optional<LocalDate> lastDay, List<Surface> mayTouch) implements SupplyEvent {}

    /** Its pack or bottle was opened. */
    record Opened(Origin origin, SupplyId supply) implements SupplyEvent {}

    /** It touched what must not come onto titanium. */
    record Contaminated(Origin origin, SupplyId supply, String what) implements SupplyEvent {}

    /** It was cleaned, or its working part replaced. */
    record MadeClean(Origin origin, SupplyId supply, String how) implements SupplyEvent {}

    /** It was calibrated; that holds until the end of the day {@code until}. */
    record Calibrated(Origin origin, SupplyId supply, LocalDate until, String certificate) implements SupplyEvent {}

    /** Nothing is left of it. */
    record UsedUp(Origin origin, SupplyId supply) implements SupplyEvent {}

    /** It left the shop for good. */
    record Retired(Origin origin, SupplyId supply, String reason) implements SupplyEvent {}
}
