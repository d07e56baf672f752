package brightseam.ui.gear;

import brightseam.procedure.Vocabulary;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.CautionList;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;

/** Brings a cylinder, bundle or dewar of argon into the shop. */
@Route("argon/delivery")
@PageTitle("Delivery of argon")
@RolesAllowed({"LEAD", "PROCESS_CONTROL"})
@StyleSheet("context://frontend/gear.css")
class DeliveryView extends DeskPage {

    private final ArgonDesk argon;
    private final Vocabulary vocabulary;
    private final DeliveryForm form = new DeliveryForm(this::deliver);

    DeliveryView(Desk desk, ArgonDesk argon, Vocabulary vocabulary) {
        super(desk, "Delivery of argon");
        this.argon = argon;
        this.vocabulary = vocabulary;
        head("Delivery of argon", "One label for each cylinder, bundle or dewar, as long as its filling lasts.");
        show(Forms.panel("Before you touch a cylinder", CautionList.of(List.of(
                        vocabulary.cautions().get("gas-cylinders")), vocabulary.safetyNotice())),
                Forms.panel("What came", form),
                Forms.row(Links.to("argon", "Back to the argon"), Links.to("shop/labels", "Print labels")));
    }

    private void deliver() {
        told().guarded(() -> told().outcome(() -> argon.store().deliver(form.supply(vocabulary, desk().origin()),
                form.argon(desk().origin(), desk().now())))).ifPresent(source -> {
                    told().done("Entered", source.id() + " " + argon.title(source.id())
                            + " stands by. Print its label and put it on.");
                    form.clear();
                });
    }
}
