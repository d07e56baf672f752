package brightseam.ui.weld;

import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.weld.shell.JointView;
import brightseam.weld.shell.Joints;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;

/** The kits that have joints, with how many of them wait for the inspector. */
@Route("stamp/joints")
@PageTitle("Joints")
@RolesAllowed("INSPECTOR")
@StyleSheet("context://frontend/weld.css")
class JointDeskView extends DeskPage {

    private final Kits kits;
    private final Joints joints;
    private final DeskTable<KitJoints> table = new DeskTable<>("Kits with a weld map that are not closed",
            "No kit has an issued weld map. A lead draws and issues it on the kit's page.");

    /** A kit and its joints. */
    private record KitJoints(Kit kit, List<JointView> joints) {}

    JointDeskView(Desk desk, Kits kits, Joints joints, Changes changes) {
        super(desk, "Joints");
        this.kits = kits;
        this.joints = joints;
        table.cell("Kit", row -> Links.to("stamp/joints/" + row.kit().id(), row.kit().id().value()))
                .text("Title", row -> row.kit().title()).text("Joints", row -> JointWords.counts(row.joints()));
        show(Forms.panel("Joints to judge", table));
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> stream.family().equals("joint"))) {
                refresh();
            }
        });
        refresh();
    }

    private void refresh() {
        table.show(kits.open().stream().map(kit -> new KitJoints(kit, joints.ofKit(kit.id())))
                .filter(row -> !row.joints().isEmpty()).toList());
    }
}
