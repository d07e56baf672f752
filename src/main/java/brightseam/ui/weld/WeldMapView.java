package brightseam.ui.weld;

import brightseam.kernel.Decision;
import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Versioned;
import brightseam.picture.Picture;
import brightseam.picture.PictureCheck;
import brightseam.picture.shell.Pictures;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Links;
import brightseam.ui.parts.Changes;
import brightseam.ui.parts.Mark;
import brightseam.ui.parts.Texts;
import brightseam.weld.MapJoint;
import brightseam.weld.MapList;
import brightseam.weld.MapSheet;
import brightseam.weld.Spot;
import brightseam.weld.WeldMap;
import brightseam.weld.WeldMapRefusal;
import brightseam.weld.shell.WeldMaps;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.UploadHandler;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The weld map of one kit: read the joints in, put them on the picture, check, issue. */
@Route("board/kit/:id/weld-map")
@PageTitle("Weld map")
@RolesAllowed("LEAD")
@StyleSheet("context://frontend/weld.css")
class WeldMapView extends DeskPage implements BeforeEnterObserver {

    private final Kits kits;
    private final WeldMaps maps;
    private final Pictures pictures;
    private final Div joints = new Div();
    private final Div picture = new Div();
    private final Div issuing = new Div();
    private final Select<MapJoint> placed = new Select<>();
    private final PasswordField pin = Forms.pin("Your PIN");
    private Optional<KitId> id = Optional.empty();

    WeldMapView(Desk desk, Kits kits, WeldMaps maps, Pictures pictures, Changes changes) {
        super(desk, "Weld map");
        this.kits = kits;
        this.maps = maps;
        this.pictures = pictures;
        placed.setLabel("Joint to place");
        placed.setItemLabelGenerator(joint -> joint.number() + " " + joint.description());
        show(picture, joints, issuing);
        changes.follow(this, streams -> {
            if (streams.stream().anyMatch(stream -> stream.family().equals("weld-map"))) {
                refresh();
            }
        });
    }

    @Override
    public void beforeEnter(BeforeEnterEvent entering) {
        id = label(entering, "id", KitId::new);
        joints.removeAll();
        kit().ifPresent(kit -> joints.add(Forms.panel("Read the joints in", new MapListForm(told(),
                map().map(map -> map.draft().drawing()).orElse(""), this::draw))));
        refresh();
    }

    private Optional<Kit> kit() {
        return id.flatMap(kits::find).map(Versioned::state);
    }

    private Optional<WeldMap> map() {
        return id.flatMap(maps::find).map(Versioned::state);
    }

    private void refresh() {
        picture.removeAll();
        issuing.removeAll();
        if (kit().isEmpty()) {
            head("No such kit", "No kit of this shop has that label.");
            return;
        }
        Kit kit = kit().orElseThrow();
        head("Weld map of " + kit.id() + " " + kit.title(), map().map(map -> MapNotes.standing(map, desk().zone()))
                .orElse("It has none yet. Read the list of its joints in."));
        map().ifPresent(map -> {
            picture.add(Forms.panel("Picture and joints", drawn(map), table(map.draft()),
                    Forms.row(Files.csv("Save the joints as CSV", kit.id() + "-joints.csv",
                            () -> MapList.write(map.draft().joints())))));
            issuing.add(Forms.panel("Check and issue", check(kit, map)));
        });
    }

    private Component drawn(WeldMap map) {
        Div all = new Div();
        all.addClassName("weld-drawn");
        map.draft().pictureSha256().ifPresent(key -> {
            MapFigure figure = new MapFigure(key, map.draft().drawing());
            map.draft().joints().forEach(joint -> joint.spot().ifPresent(spot ->
                    figure.mark(joint.number(), spot, Mark.Kind.TO_COME, false)));
            figure.onTouch(this::place);
            MapJoint before = placed.getValue();
            placed.setItems(map.draft().joints());
            Optional.ofNullable(before).flatMap(old -> map.draft().joint(old.number())).ifPresent(placed::setValue);
            placed.setHelperText("Choose a joint, then touch the picture where it lies.");
            all.add(Forms.row(placed), figure);
        });
        all.add(Forms.row(upload(map)));
        return all;
    }

    private Upload upload(WeldMap map) {
        Upload upload = new Upload(UploadHandler.inMemory((about, content) -> keep(content)));
        upload.setUploadButton(Forms.button(map.draft().pictureSha256().isPresent() ? "Choose another picture"
                : "Choose a picture (PNG or JPEG)", () -> { }));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(PictureCheck.BYTES_MAX);
        upload.setAcceptedFileTypes("image/png", "image/jpeg", ".png", ".jpg", ".jpeg");
        upload.setDropAllowed(false);
        upload.addAllFinishedListener(finished -> upload.clearFileList());
        upload.addFileRejectedListener(rejected -> told().refused("Not taken",
                "The file is too large or no picture.", "Choose a PNG or JPEG of at most 8 MB."));
        return upload;
    }

    private void keep(byte[] content) {
        told().guarded(() -> Optional.of(pictures.store(content, desk().origin()))).ifPresent(stored -> {
            switch (stored) {
                case Decision.Refused<Picture> refused -> told().refused(refused.refusals());
                case Decision.Accepted<Picture> accepted -> {
                    String key = accepted.events().getFirst().sha256();
                    map().ifPresent(map -> draw(
                            map.draft().picturedBy(Optional.of(key)), "The picture is on the map."));
                }
            }
        });
    }

    private void draw(String drawing, List<MapJoint> read) {
        told().guarded(() -> Optional.of(new MapSheet(
                        drawing, map().flatMap(map -> map.draft().pictureSha256()), read)))
                .ifPresent(sheet -> draw(sheet, read.size() + " joints were read. Check them, then issue the map."));
    }

    private void draw(MapSheet sheet, String done) {
        told().outcome(() -> maps.draw(desk().actor(), id.orElseThrow(), sheet)).ifPresent(map -> {
            told().done("Drawn", done);
            refresh();
        });
    }

    private void place(Spot spot) {
        if (placed.isEmpty()) {
            told().refused("Which joint?", "No joint is chosen.", "Choose one above the picture, then touch it.");
            return;
        }
        told().outcome(() -> maps.move(desk().actor(), id.orElseThrow(), placed.getValue().number(), spot))
                .ifPresent(map -> refresh());
    }

    private static DeskTable<MapJoint> table(MapSheet sheet) {
        return new DeskTable<MapJoint>("Joints of the map", "The map has no joints yet. Read their list in below.")
                .text("Joint", MapJoint::number)
                .text("Description", MapJoint::description)
                .text("Class", joint -> joint.jointClass().name())
                .text("Plan", JointWords::work)
                .text("Colour by", MapJoint::acceptance)
                .show(sheet.joints());
    }

    private Component check(Kit kit, WeldMap map) {
        List<WeldMapRefusal> against = maps.objections(kit.id());
        List<String> notes = new ArrayList<>(MapNotes.unjoined(kit, map.draft()));
        List<String> unplaced = MapNotes.unplaced(map.draft());
        if (!unplaced.isEmpty()) {
            notes.add("Not on the picture: " + String.join(", ", unplaced));
        }
        Div all = new Div();
        if (!against.isEmpty()) {
            all.add(Forms.note("Before it can be issued:"), Texts.lines(against.stream()
                    .map(refusal -> desk().wording().explain(refusal).sentence()).toList()));
        }
        if (!notes.isEmpty()) {
            all.add(Forms.note("Look at this too; it keeps nothing from being issued:"), Texts.lines(notes));
        }
        if (against.isEmpty()) {
            all.add(Forms.note("Joints that were welded already stay with the issue that they were welded to."),
                    Forms.row(pin, Forms.act("Issue and sign", this::issue)));
        }
        all.add(Links.to("board/kit/" + kit.id(), "Back to the kit"));
        return all;
    }

    private void issue() {
        told().signer(pin).ifPresent(signer ->
                told().outcome(() -> maps.issue(desk().actor(), id.orElseThrow(), signer)).ifPresent(map -> {
                    told().done("Issued", "Issue " + map.issues().size() + " of the map of " + map.kit() + ".");
                    refresh();
                }));
    }
}
