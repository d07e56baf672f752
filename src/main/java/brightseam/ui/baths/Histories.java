package brightseam.ui.baths;

import brightseam.line.BathDeed;
import brightseam.line.BathQuantity;
import brightseam.line.SampleLine;
import brightseam.ui.desk.Csv;
import brightseam.ui.desk.DeskTable;
import brightseam.words.Words;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The analyses of a bath and what was done to it, as tables and as text. */
final class Histories {

    private Histories() {}

    static Component samples(List<SampleLine> samples, ZoneId zone, Supplier<List<SampleLine>> all) {
        return new DeskTable<SampleLine>("Latest first",
                "Nobody has analysed this bath yet. Take a sample and enter the analysis.")
                .text("Sample", SampleLine::sample)
                .text("Taken", line -> Words.stamp(line.takenAt(), zone))
                .cell("Found", Histories::found)
                .text("Verdict", line -> line.inLimits() ? "in order" : "OUT OF LIMITS")
                .text("Signed by", SampleLine::by).file(() -> csv(all.get())).show(samples);
    }

    static Component deeds(List<BathDeed> deeds, ZoneId zone, Supplier<List<BathDeed>> all) {
        return new DeskTable<BathDeed>("Latest first", "Nothing was done to this bath yet.")
                .text("When", deed -> Words.stamp(deed.at(), zone))
                .text("Fill", deed -> String.valueOf(deed.fill()))
                .cell("What", deed -> withWorkings(BathWords.deed(deed), deed.workings()))
                .text("By", BathWords::by).whole(all).show(deeds);
    }

    /** Every analysis with a column for each quantity, oldest first; times in UTC. */
    static String csv(List<SampleLine> latestFirst) {
        List<BathQuantity> quantities = List.of(BathQuantity.values());
        List<String> header = new ArrayList<>(List.of("sample", "fill", "taken_at", "entered_at", "method", "verdict"));
        quantities.forEach(quantity -> header.add(column(quantity)));
        header.addAll(List.of("signed_by", "workings"));
        return Csv.write(header, latestFirst.reversed().stream().map(line -> Stream.of(
                Stream.of(line.sample(), String.valueOf(line.fill()), line.takenAt().toString(),
                        line.enteredAt().toString(), line.method(), line.inLimits() ? "in order" : "out of limits"),
                quantities.stream().map(quantity -> Optional.ofNullable(line.values().get(quantity))
                        .map(value -> value.toPlainString()).orElse("")),
                Stream.of(line.by(), String.join(" | ", line.workings()))).flatMap(cells -> cells).toList()).toList());
    }

    /** Lines of a calculation, folded away under {@code words}. */
    static Component withWorkings(String words, List<String> workings) {
        if (workings.isEmpty()) {
            return new Span(words);
        }
        NativeDetails details = new NativeDetails("How it was worked out", workings(workings));
        return new Div(new Span(words), details);
    }

    /** Lines of a calculation as a list. */
    static OrderedList workings(List<String> lines) {
        OrderedList list = new OrderedList();
        list.addClassName("bath-workings");
        lines.forEach(line -> list.add(new ListItem(line)));
        return list;
    }

    private static Component found(SampleLine line) {
        return withWorkings(line.values().entrySet().stream()
                .map(found -> BathWords.quantity(found.getKey()) + " "
                        + BathWords.value(found.getKey(), found.getValue())
                        + (line.outOfLimits().contains(found.getKey()) ? " (out)" : ""))
                .collect(Collectors.joining("; ")) + ". " + line.method() + ".", line.workings());
    }

    private static String column(BathQuantity quantity) {
        String unit = switch (quantity) {
            case NITRIC_ACID, HYDROFLUORIC_ACID -> "_vol_pct";
            case ACID_RATIO, PH -> "";
            case TEMPERATURE -> "_deg_c";
            case DISSOLVED_TITANIUM -> "_g_per_l";
            case CONDUCTIVITY -> "_us_per_cm";
            case CHLORIDE -> "_ppm";
            case CLEANER_STRENGTH -> "_pct";
        };
        return quantity.name().toLowerCase(java.util.Locale.ROOT) + unit;
    }
}
