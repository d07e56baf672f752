package brightseam.ui.baths;

import brightseam.line.Station;
import brightseam.procedure.Vocabulary;
import brightseam.ui.desk.Forms;
import brightseam.ui.parts.CautionList;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.util.List;
import java.util.Optional;

/** What can hurt whoever takes a sample at a tank or adds to its bath. */
final class Cautions {

    private Cautions() {}

    /** The cautions of the tank's class, with the notice that goes before them; nothing where there are none. */
    static Component of(Vocabulary vocabulary, Station station) {
        List<Vocabulary.Caution> cautions = Optional.ofNullable(vocabulary.stations().get(station.stationClass()))
                .map(known -> known.cautions().stream().map(vocabulary.cautions()::get).toList()).orElse(List.of());
        return cautions.isEmpty() ? new Div()
                : Forms.panel("Before you go to the tank", CautionList.of(cautions, vocabulary.safetyNotice()));
    }
}
