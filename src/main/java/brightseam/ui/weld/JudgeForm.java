package brightseam.ui.weld;

import brightseam.kernel.Decision;
import brightseam.picture.Picture;
import brightseam.picture.PictureCheck;
import brightseam.picture.shell.Pictures;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.ui.parts.Mark;
import brightseam.weld.ColourScale;
import brightseam.weld.FindingKind;
import brightseam.weld.Ruling;
import brightseam.weld.Verdict;
import brightseam.weld.WeldColour;
import brightseam.weld.shell.Joints;
import brightseam.weld.shell.JointView;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Judges a joint: colours, findings, light, photographs, verdict and stamp. */
final class JudgeForm extends Div {

    private static final String BEFORE = "Before anything was brushed";
    private static final String AFTER = "It was brushed before";

    private final Desk desk;
    private final Told told;
    private final Joints joints;
    private final Pictures pictures;
    private final JointView joint;
    private final JudgeModel model;
    private final Runnable judged;
    private final List<SwatchButton> bands = new ArrayList<>();
    private final Div ruling = new Div();
    private final Div photographs = new Div();
    private final TextField lux = Forms.text("Light at the joint, lux", "");
    private final TextField meter = Forms.text("Light meter", "scan or type its label, such as G-0301");
    private final TextArea remark = new TextArea("Remark (goes into the record)");
    private final PasswordField pin = Forms.pin("Your PIN");

    JudgeForm(Desk desk, Told told, Joints joints, Pictures pictures, ColourScale scale, JointView joint,
            Runnable judged) {
        this.desk = desk;
        this.told = told;
        this.joints = joints;
        this.pictures = pictures;
        this.joint = joint;
        this.model = new JudgeModel(scale, joint.plan());
        this.judged = judged;
        addClassName("judge");
        ruling.addClassName("judge-ruling");
        ruling.getElement().setAttribute("role", "status");
        photographs.addClassName("judge-photographs");
        lux.setHelperText("at least " + scale.luxMin().toPlainString() + " lux");
        remark.setWidthFull();
        add(new H3("Colours on the weld: touch every one"), swatches(scale), new H3("Looked at"), brushing(),
                new H3("A narrow band at the edge of the shield, where there is one"), bandSwatches(scale),
                new H3("What else was seen"), findings(scale), new H3("Light"), Forms.row(lux, meter),
                Forms.note("Least light by: " + scale.luxSource() + "."),
                new H3("Photographs"), Forms.row(upload()), photographs, ruling, remark,
                Forms.row(pin, verdict("Accept and stamp", Verdict.ACCEPT, "judge-accept"),
                        verdict("Reject and stamp", Verdict.REJECT, "judge-reject")));
        rule();
    }

    private Div swatches(ColourScale scale) {
        Div row = new Div();
        row.addClassName("swatches");
        for (WeldColour colour : scale.colours()) {
            row.add(new SwatchButton(colour, "on the weld", model::touchWeld, this::rule));
        }
        return row;
    }

    private Div bandSwatches(ColourScale scale) {
        Div row = new Div();
        row.addClassNames("swatches", "swatches-band");
        for (WeldColour colour : scale.colours()) {
            SwatchButton button = new SwatchButton(colour, "at the edge", model::touchBand, () -> { });
            button.addClickListener(pressed -> {
                bands.forEach(other -> other.choose(false));
                button.choose(model.band().filter(colour.key()::equals).isPresent());
                rule();
            });
            bands.add(button);
            row.add(button);
        }
        return row;
    }

    private RadioButtonGroup<String> brushing() {
        RadioButtonGroup<String> choice = new RadioButtonGroup<>();
        choice.setAriaLabel("Looked at before or after brushing");
        choice.setItems(BEFORE, AFTER);
        choice.addValueChangeListener(chosen -> model.brushed(BEFORE.equals(chosen.getValue())));
        return choice;
    }

    private Div findings(ColourScale scale) {
        Div all = new Div();
        all.addClassName("judge-findings");
        for (FindingKind kind : scale.findings()) {
            TextField where = Forms.text("Where and how large", "");
            where.setAriaLabel(kind.name() + ": where and how large");
            where.setVisible(false);
            Checkbox seen = new Checkbox(kind.name());
            seen.addValueChangeListener(change -> {
                where.setVisible(change.getValue());
                found(kind, seen, where);
            });
            where.addValueChangeListener(change -> found(kind, seen, where));
            all.add(new Div(seen, where));
        }
        return all;
    }

    private void found(FindingKind kind, Checkbox seen, TextField where) {
        model.found(kind.key(), seen.getValue() ? Optional.of(where.getValue()) : Optional.empty());
        rule();
    }

    private Upload upload() {
        Upload upload = new Upload(UploadHandler.inMemory((about, content) -> keep(content)));
        upload.setUploadButton(Forms.button("Add photographs", () -> { }));
        upload.setAcceptedFileTypes("image/png", "image/jpeg", ".png", ".jpg", ".jpeg");
        upload.setMaxFileSize(PictureCheck.BYTES_MAX);
        upload.setDropAllowed(false);
        upload.addAllFinishedListener(finished -> upload.clearFileList());
        upload.addFileRejectedListener(rejected -> told.refused("Not taken", "The file is too large or no picture.",
                "Choose a PNG or JPEG of at most 8 MB."));
        return upload;
    }

    private void keep(byte[] content) {
        told.guarded(() -> Optional.of(pictures.store(content, desk.origin()))).ifPresent(stored -> {
            switch (stored) {
                case Decision.Refused<Picture> refused -> told.refused(refused.refusals());
                case Decision.Accepted<Picture> accepted -> show(accepted.events().getFirst().sha256());
            }
        });
    }

    private void show(String sha256) {
        if (!model.photograph(sha256)) {
            told.refused("Not added", "It is among the photographs, or there are as many as one judgement takes.",
                    "Take one out first.");
            return;
        }
        Div one = new Div(new Image("picture/" + sha256, "Photograph " + model.photographs().size()));
        one.add(Forms.button("Take out", () -> {
            model.withoutPhotograph(sha256);
            photographs.remove(one);
        }));
        photographs.add(one);
    }

    private void rule() {
        ruling.removeAll();
        Optional<Ruling> now = model.ruling();
        ruling.getElement().setAttribute("data-ruling", now.map(Enum::name).orElse("NONE"));
        Mark.Kind mark = now.map(word -> switch (word) {
            case ACCEPT -> Mark.Kind.SIGNED;
            case CONDITIONAL -> Mark.Kind.CAUTION;
            case REJECT -> Mark.Kind.REFUSED;
        }).orElse(Mark.Kind.NOW);
        Div lines = new Div();
        model.ruledBy().forEach(line -> lines.add(new Paragraph(line)));
        ruling.add(new Mark(mark), new Span(now.map(word -> switch (word) {
            case ACCEPT -> "May stay";
            case CONDITIONAL -> "On a condition";
            case REJECT -> "May not stay";
        }).orElse("Which colours?")), lines);
    }

    private NativeButton verdict(String words, Verdict verdict, String look) {
        NativeButton button = Forms.act(words, () -> send(verdict));
        button.addClassNames("judge-verdict", look);
        return button;
    }

    private void send(Verdict verdict) {
        told.guarded(() -> Optional.of(model.judging(
                        verdict, lux.getValue(), meter.getValue(), remark.getValue())))
                .ifPresent(judging -> told.signer(pin).ifPresent(signer ->
                        told.outcome(() -> joints.judge(desk.actor(), joint.id(), judging, signer)).ifPresent(done -> {
                            told.done(verdict == Verdict.ACCEPT ? "Accepted" : "Rejected", joint.id()
                                    + (verdict == Verdict.ACCEPT ? " may stay as it is."
                                    : ": a nonconformance is open on its travellers."));
                            judged.run();
                        })));
    }
}
