package brightseam.ui.board;

import brightseam.kernel.HeatId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.kit.ListProblem;
import brightseam.kit.PartsColumn;
import brightseam.kit.PartsList;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Takes the lines of a kit: typed one by one, or as a list that is pasted or uploaded. Of a bad list nothing is used.
 */
final class ListForm extends Div {

    private static final int BYTES_PER_CHARACTER_MAX = 4;

    private final Told told;
    private final Supplier<Kit> kit;
    private final Consumer<List<KitLine>> accepted;
    private final TextArea pasted = new TextArea("Parts list as CSV");
    private final DeskTable<ListProblem> problems = new DeskTable<ListProblem>(
            "What is wrong with the list; nothing of it was used", "No problem is known.")
            .withoutFile().text("Line", problem -> String.valueOf(problem.line()))
            .text("Column", problem -> String.valueOf(problem.column()))
            .text("Found", ListProblem::found).text("Expected", ListProblem::expected);

    ListForm(Told told, Supplier<Kit> kit, List<String> procedures, Consumer<List<KitLine>> accepted) {
        this.told = told;
        this.kit = kit;
        this.accepted = accepted;
        addClassName("desk-form");
        problems.setVisible(false);
        problems.getElement().setAttribute("role", "alert");
        String columns = Arrays.stream(PartsColumn.values()).map(PartsColumn::header).collect(Collectors.joining(","));
        pasted.setHelperText("First line: " + columns + ". The heat may be left empty.");
        pasted.setMinRows(4);
        pasted.setMaxRows(12);
        add(new H3("Type a line"), typed(procedures), new H3("Or take a whole list"), pasted,
                Forms.row(Forms.button("Check the list and add it", () -> read(pasted.getValue())), upload()),
                problems);
    }

    private Div typed(List<String> procedures) {
        TextField part = Forms.text("Part number", "such as LF-100-01");
        TextField description = Forms.text("Description", "such as Frame leg, upper tube");
        TextField revision = Forms.text("Drawing revision", "- for the first issue");
        IntegerField quantity = new IntegerField("Pieces");
        quantity.setMin(1);
        quantity.setMax(9999);
        Select<String> procedure = new Select<>();
        procedure.setLabel("Procedure");
        procedure.setItems(procedures);
        TextField heat = Forms.text("Heat", "may be chosen later");
        return Forms.row(part, description, revision, quantity, procedure, heat,
                Forms.button("Add this line", () -> told.guarded(() -> Optional.of(new KitLine(
                        kit.get().nextLineNumber(), part.getValue(), description.getValue(), revision.getValue(),
                        quantity.getOptionalValue().orElse(0), procedure.getOptionalValue().orElse(""),
                        Optional.of(heat.getValue().strip()).filter(text -> !text.isEmpty()).map(HeatId::new))))
                        .ifPresent(line -> {
                            accepted.accept(List.of(line));
                            part.clear();
                            description.clear();
                        })));
    }

    private Upload upload() {
        Upload upload = new Upload(UploadHandler.inMemory((about, content) ->
                read(new String(content, StandardCharsets.UTF_8))));
        upload.setUploadButton(Forms.button("Choose a CSV file", () -> { }));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(PartsList.CHARACTERS_MAX * BYTES_PER_CHARACTER_MAX);
        upload.setAcceptedFileTypes(".csv", "text/csv", "text/plain");
        upload.setDropAllowed(false);
        upload.addAllFinishedListener(finished -> upload.clearFileList());
        upload.addFileRejectedListener(rejected -> told.refused("Not taken", "The file is too large or no CSV file.",
                "Choose a CSV file of at most " + PartsList.LINES_MAX + " lines."));
        return upload;
    }

    private void read(String csv) {
        switch (PartsList.parse(csv, kit.get().nextLineNumber())) {
            case PartsList.Accepted list -> {
                problems.setVisible(false);
                pasted.clear();
                accepted.accept(list.lines());
            }
            case PartsList.Rejected bad -> {
                problems.show(bad.problems());
                problems.setVisible(true);
                told.refused("List not used", bad.problems().size() + " of its cells or lines are wrong.",
                        "Correct them in the list and check it again.");
            }
        }
    }
}
