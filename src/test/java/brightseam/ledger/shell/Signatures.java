package brightseam.ledger.shell;

import brightseam.ledger.Append;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A small projection for tests: how many entries each stream has, and the last content. */
final class Signatures implements Projection {

    private final JdbcClient jdbc;

    Signatures(JdbcClient jdbc) {
        this.jdbc = jdbc;
        jdbc.sql("""
                        create table if not exists test_signatures (
                            stream varchar(80) primary key, entries bigint not null, last varchar(200) not null)
                        """)
                .update();
    }

    @Override
    public List<String> tables() {
        return List.of("test_signatures");
    }

    @Override
    public void apply(Entry entry) {
        int known = jdbc.sql("update test_signatures set entries = entries + 1, last = ? where stream = ?")
                .params(entry.json(), entry.stream().value())
                .update();
        if (known == 0) {
            jdbc.sql("insert into test_signatures (stream, entries, last) values (?, 1, ?)")
                    .params(entry.stream().value(), entry.json())
                    .update();
        }
    }

    static StreamName stream(String identity) {
        return StreamName.of("traveller", identity);
    }

    static Append append(String identity, long expectedVersion, String... texts) {
        return new Append(
                stream(identity), expectedVersion,
                List.of(texts).stream().map(text -> new NewEvent("signed.1", "{\"text\":\"" + text + "\"}")).toList());
    }
}
