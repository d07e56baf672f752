package brightseam.ui.admin;

import brightseam.bins.Bin;
import brightseam.bins.BinCommand;
import brightseam.bins.shell.Bins;
import brightseam.kernel.BinId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import brightseam.ui.desk.CapacityWords;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.desk.TwoPresses;
import brightseam.words.Words;
import brightseam.words.Wording;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The bins of the shop. */
@Route("shop/bins")
@PageTitle("Bins")
@RolesAllowed({"LEAD", "ADMINISTRATOR"})
class BinsView extends DeskPage {

    private final Bins bins;
    private final CapacityForm capacity = new CapacityForm(this::setCapacity);
    private final DeskTable<Bin> table = new DeskTable<Bin>("Every bin, retired ones too",
            "No bin is registered. Register a run of shop bins, process baskets, clean bins and bags above.")
            .text("Bin", bin -> bin.id().value())
            .text("Class", bin -> Wording.words(bin.binClass().name()))
            .text("State", BinsView::state)
            .text("Takes", bin -> CapacityWords.of(bin.capacity()))
            .cell("Inside", BinsView::inside)
            .act("Actions", this::actions);

    BinsView(Desk desk, Bins bins) {
        super(desk, "Bins");
        this.bins = bins;
        show(Forms.panel("Register bins", registration()), Forms.panel("Capacity of a bin", capacity),
                Forms.panel("All bins", table.file(() -> csv(bins.all())), Forms.row(
                        Links.to("shop/labels", "Print labels"))));
        refresh();
    }

    private void setCapacity() {
        told().guarded(() -> told().outcome(() -> bins.execute(capacity.command(desk().origin())))).ifPresent(bin -> {
            told().done("Capacity set", bin.id() + ": " + CapacityWords.of(bin.capacity()) + ".");
            refresh();
        });
    }

    private void refresh() {
        table.show(bins.all());
    }

    private Div registration() {
        TextField label = Forms.text("First label", "begins with B-, such as B-0141");
        IntegerField count = new IntegerField("How many, numbered on");
        count.setMin(1);
        count.setMax(BinRun.COUNT_MAX);
        count.setValue(1);
        Select<BinClass> binClass = new Select<>();
        binClass.setLabel("Class");
        binClass.setItems(BinClass.values());
        binClass.setItemLabelGenerator(one -> Wording.words(one.name()));
        binClass.setValue(BinClass.SHOP_BIN);
        IntegerField capacity = new IntegerField("Travellers at once (empty: no limit)");
        capacity.setMin(1);
        return Forms.row(label, count, binClass, capacity, Forms.act("Register", () ->
                told().guarded(() -> Optional.of(BinRun.labels(label.getValue(), count.getOptionalValue().orElse(1))))
                        .ifPresent(labels -> register(labels, binClass.getValue(), capacity.getOptionalValue()))));
    }

    /** All of a run or, where one of its labels is taken, the ones before it; that is said. */
    private void register(List<BinId> labels, BinClass binClass, Optional<Integer> capacity) {
        int done = 0;
        for (BinId label : labels) {
            if (told().guarded(() -> told().outcome(() -> bins.execute(
                    new BinCommand.RegisterBin(label, binClass, capacity, desk().origin())))).isEmpty()) {
                break;
            }
            done++;
        }
        refresh();
        if (done == labels.size()) {
            told().done("Registered", Words.count(done, "bin", "bins") + ", " + labels.getFirst() + " to "
                    + labels.getLast() + (binClass == BinClass.CLEAN_BIN ? ". Declare them cleaned before use." : "."));
        }
    }

    private Component actions(Bin bin) {
        Div actions = new Div();
        actions.addClassName("cell-actions");
        if (bin.retired()) {
            return actions;
        }
        if (bin.binClass() == BinClass.CLEAN_BIN) {
            Component cleaned = Forms.button("Declare cleaned",
                    () -> run("Declared cleaned", new BinCommand.DeclareCleaned(bin.id(), desk().origin())));
            cleaned.getElement().setAttribute("aria-label", "Declare cleaned " + bin.id());
            actions.add(cleaned);
        }
        Component limits = Forms.button("Capacity", () -> capacity.choose(bin.id(), bin.capacity()));
        limits.getElement().setAttribute("aria-label", "Capacity of " + bin.id());
        actions.add(limits, TwoPresses.forGood("Retire", bin.id().value(),
                () -> run("Retired", new BinCommand.RetireBin(bin.id(), desk().origin()))));
        return actions;
    }

    private void run(String word, BinCommand command) {
        told().outcome(() -> bins.execute(command)).ifPresent(after -> {
            told().done(word, after.id() + ": " + state(after) + ".");
            refresh();
        });
    }

    private static String state(Bin bin) {
        if (bin.retired()) {
            return "retired";
        }
        String lid = bin.binClass().isClean() ? bin.closed() ? "closed, " : "open, " : "";
        return lid + switch (bin.fitness()) {
            case FIT -> "fit for use";
            case SOILED -> "has to be cleaned first";
            case SPENT -> "used bag, takes nothing again";
        };
    }

    private static Component inside(Bin bin) {
        Span inside = new Span(bin.inside().isEmpty() ? "empty" : "");
        bin.inside().forEach(id -> inside.add(Links.to("board/traveller/" + id, id.value()), new Span(" ")));
        return inside;
    }

    private static String csv(List<Bin> all) {
        return Csv.write(List.of("bin", "class", "state", "takes", "inside"), all.stream().map(bin -> List.of(
                bin.id().value(), Wording.words(bin.binClass().name()), state(bin), CapacityWords.of(bin.capacity()),
                bin.inside().stream().map(TravellerId::value).collect(Collectors.joining(" ")))).toList());
    }
}
