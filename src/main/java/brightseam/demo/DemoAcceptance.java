package brightseam.demo;

import brightseam.weld.AcceptanceTable;
import brightseam.weld.AcceptanceTable.Row;
import brightseam.weld.Ruling;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The invented welding specification of the demo shop: tighter than the standard on the weld, and it names bronze. */
@Configuration
@ConditionalOnProperty(name = "brightseam.shop", havingValue = "demo")
class DemoAcceptance {

    private static final Row ACCEPT = new Row(Ruling.ACCEPT, Optional.empty());
    private static final Row ASK = new Row(Ruling.CONDITIONAL,
            Optional.of("the drawing has to accept bronze by name, and the trial piece of this joint shows the same"));
    private static final Row REJECT = new Row(Ruling.REJECT,
            Optional.of("find out what opened the shield; what becomes of the joint is decided in the nonconformance"));
    private static final Row REMOVE = new Row(Ruling.REJECT, Optional.of("remove all of the weld"));

    @Bean
    static AcceptanceTable shopSpecification() {
        return new AcceptanceTable("hdf-ws-07", "HDF-WS-07 rev 2 (demo)",
                List.of("Invented welding specification of the demo shop"), onTheWeld(), atTheEdge());
    }

    private static Map<String, Row> onTheWeld() {
        Map<String, Row> rows = new LinkedHashMap<>();
        List.of("silver", "light-straw", "dark-straw").forEach(colour -> rows.put(colour, ACCEPT));
        rows.put("bronze", ASK);
        List.of("brown", "violet", "dark-blue", "light-blue", "green").forEach(colour -> rows.put(colour, REJECT));
        List.of("grey", "white").forEach(colour -> rows.put(colour, REMOVE));
        return rows;
    }

    private static Map<String, Row> atTheEdge() {
        Map<String, Row> rows = onTheWeld();
        List.of("bronze", "brown", "violet").forEach(colour -> rows.put(colour, ACCEPT));
        return rows;
    }
}
