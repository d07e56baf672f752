package brightseam.ui.board;

import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.material.Heat;
import brightseam.procedure.Procedure;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Traveller;
import brightseam.traveller.shell.ReleaseOrder;
import brightseam.traveller.shell.Releases;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which lines of a kit are still to be released, and out of which heats. */
final class KitLines {

    private KitLines() {}

    /**
     * The lines of {@code kit} that none of its {@code travellers} was released for. A traveller answers the first line
     * of its part number, drawing revision and procedure that no other answers; those set apart later answer none.
     */
    static List<KitLine> unreleased(Kit kit, Collection<Traveller> travellers) {
        return Releases.unreleased(kit, travellers);
    }

    /**
     * The heats of {@code registered} that {@code procedure} may be used on: of a grade it names, not on hold; those
     * first whose form its title names, such as {@code tube}.
     */
    static List<Heat> fitting(Procedure procedure, Collection<Heat> registered) {
        String title = procedure.title().toLowerCase(Locale.ROOT);
        return registered.stream().filter(heat -> !heat.isOnHold() && procedure.grades().contains(heat.grade()))
                .sorted(Comparator.comparing((Heat heat) -> !title.contains(heat.form())).thenComparing(Heat::id))
                .toList();
    }

    /** What is asked for to release {@code line} out of {@code heat}. */
    static ReleaseOrder order(KitId kit, KitLine line, Heat heat) {
        return new ReleaseOrder(kit, new PartIdentity(line.partNumber(), line.description(), line.drawingRevision()),
                line.quantity(), heat.id(), line.procedure());
    }
}
