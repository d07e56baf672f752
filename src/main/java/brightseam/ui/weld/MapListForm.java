package brightseam.ui.weld;

import brightseam.kit.ListProblem;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Told;
import brightseam.weld.MapColumn;
import brightseam.weld.MapJoint;
import brightseam.weld.MapList;
import brightseam.weld.MapSheet;
import brightseam.words.Words;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/** Takes the joints of a map as a list that is pasted or uploaded. Of a bad list nothing is used. */
final class MapListForm extends Div {

    private static final int BYTES_PER_CHARACTER_MAX = 4;

    private final Told told;
    private final BiConsumer<String, List<MapJoint>> accepted;
    private final TextField drawing = Forms.text("Drawing", "number, revision, title");
    private final TextArea pasted = new TextArea("Joints as CSV");
    private final DeskTable<ListProblem> problems = new DeskTable<ListProblem>(
            "What is wrong with the list; nothing of it was used", "No problem is known.")
            .withoutFile().text("Line", problem -> String.valueOf(problem.line()))
            .text("Column", problem -> String.valueOf(problem.column()))
            .text("Found", ListProblem::found).text("Expected", ListProblem::expected);

    MapListForm(Told told, String known, BiConsumer<String, List<MapJoint>> accepted) {
        this.told = told;
        this.accepted = accepted;
        addClassName("desk-form");
        problems.setVisible(false);
        problems.getElement().setAttribute("role", "alert");
        drawing.setMaxLength(MapSheet.DRAWING_MAX);
        drawing.setWidth("30em");
        drawing.setValue(known);
        pasted.setHelperText("First line: "
                + Arrays.stream(MapColumn.values()).map(MapColumn::header).collect(Collectors.joining(", ")));
        pasted.setMinRows(4);
        pasted.setMaxRows(12);
        add(drawing, pasted, Forms.row(Forms.button("Check the list and take it",
                () -> read(pasted.getValue())), upload()), problems);
    }

    private Upload upload() {
        Upload upload = new Upload(UploadHandler.inMemory((about, content) ->
                read(new String(content, StandardCharsets.UTF_8))));
        upload.setUploadButton(Forms.button("Choose a CSV file", () -> { }));
        upload.setMaxFiles(1);
        upload.setMaxFileSize(MapList.CHARACTERS_MAX * BYTES_PER_CHARACTER_MAX);
        upload.setAcceptedFileTypes(".csv", "text/csv", "text/plain");
        upload.setDropAllowed(false);
        upload.addAllFinishedListener(finished -> upload.clearFileList());
        upload.addFileRejectedListener(rejected -> told.refused("Not taken", "The file is too large or no CSV file.",
                "Choose a CSV file of at most " + MapSheet.JOINTS_MAX + " lines."));
        return upload;
    }

    private void read(String csv) {
        switch (MapList.parse(csv)) {
            case MapList.Accepted list -> {
                problems.setVisible(false);
                accepted.accept(drawing.getValue(), list.joints());
            }
            case MapList.Rejected bad -> {
                problems.show(bad.problems());
                problems.setVisible(true);
                told.refused("List not used",
                        Words.count(bad.problems().size(), "cell or line is", "cells or lines are") + " wrong.",
                        "Correct them in the list and check it again.");
            }
        }
    }
}
