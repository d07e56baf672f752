package brightseam.bench;

import brightseam.app.Brightseam;
import brightseam.kernel.KitId;
import brightseam.kernel.TravellerId;
import brightseam.kit.shell.Kits;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.LastEntries;
import brightseam.ledger.shell.Ledger;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Fills a data folder with the ledger of a shop that has worked for years: what the demo shop's past really recorded of
 * its closed kits and their travellers, again and again under other labels, through the real writer with every
 * projection. Takes up where an earlier run stopped. Arguments: the folder, and the events it shall hold (a million).
 */
public final class MillionEvents {

    private static final int EVENTS = 1_000_000;
    private static final int IN_FLIGHT_MAX = 8;
    private static final long PROGRESS_EVENTS = 100_000;

    private final Ledger ledger;
    private final Travellers travellers;
    private final Kits kits;
    private final Semaphore room = new Semaphore(IN_FLIGHT_MAX);
    private final AtomicReference<String> failed = new AtomicReference<>();

    private MillionEvents(Ledger ledger, Travellers travellers, Kits kits) {
        this.ledger = ledger;
        this.travellers = travellers;
        this.kits = kits;
    }

    /** Fills and prints. */
    public static void main(String[] args) throws Exception {
        long start = System.nanoTime();
        List<String> given = Arguments.of(args);
        Path folder = Path.of(given.getFirst());
        long events = fill(folder, given.size() > 1 ? Long.parseLong(given.get(1)) : EVENTS);
        System.out.printf("%,d events in %s, made in %.0f s%n", events, folder, (System.nanoTime() - start) / 1e9);
        System.exit(0);
    }

    /** Brings the demo shop in {@code folder} to at least {@code events} events; answers how many it has. */
    public static long fill(Path folder, long events) throws InterruptedException {
        try (ConfigurableApplicationContext shop = SpringApplication.run(Brightseam.class,
                "--brightseam.shop=demo", "--brightseam.data=" + folder, "--server.port=0",
                "--brightseam.pin-strength=4", "--brightseam.greeting=false", "--brightseam.https-port=-1")) {
            new MillionEvents(shop.getBean(Ledger.class), shop.getBean(Travellers.class), shop.getBean(Kits.class))
                    .grow(shop.getBean(LastEntries.class), events);
            return position(shop.getBean(LastEntries.class));
        }
    }

    /** Bytes of the database file in {@code folder}. */
    public static long bytes(Path folder) throws java.io.IOException {
        return Files.size(folder.resolve("brightseam.mv.db"));
    }

    private static long position(LastEntries last) {
        return last.last(1).getFirst().position();
    }

    /** One closed kit with what was recorded of it and of its travellers, as it is copied. */
    private record Original(String kit, List<String> travellers, List<List<Entry>> records) {

        long events() {
            return records.stream().mapToLong(List::size).sum();
        }

        List<Append> copy(long number) {
            Map<String, String> labels = new TreeMap<>();
            labels.put('"' + kit + '"', "\"K-C" + number + '"');
            for (int i = 0; i < travellers.size(); i++) {
                labels.put('"' + travellers.get(i) + '"', "\"T-C" + number + "-" + (i + 1) + '"');
            }
            return records.stream().map(record -> new Append(renamed(record.getFirst().stream(), labels), 0,
                    record.stream().map(entry -> new NewEvent(entry.type(), renamed(entry.json(), labels))).toList()))
                    .toList();
        }

        private static StreamName renamed(StreamName stream, Map<String, String> labels) {
            String label = labels.get('"' + stream.identity() + '"');
            return StreamName.of(stream.family(), label.substring(1, label.length() - 1));
        }

        private static String renamed(String json, Map<String, String> labels) {
            String text = json;
            for (Map.Entry<String, String> label : labels.entrySet()) {
                text = text.replace(label.getKey(), label.getValue());
            }
            return text;
        }
    }

    private void grow(LastEntries last, long events) throws InterruptedException {
        List<Original> originals = originals();
        long held = position(last);
        long told = held;
        for (long number = held; held < events; number++) {
            Original original = originals.get((int) (number % originals.size()));
            store(original.copy(number));
            held += original.events();
            if (held - told >= PROGRESS_EVENTS) {
                told = held;
                System.out.printf("%,d events%n", held);
            }
        }
        room.acquire(IN_FLIGHT_MAX);
        if (failed.get() != null) {
            throw new IllegalStateException("a copy was not stored: " + failed.get());
        }
    }

    private void store(List<Append> appends) throws InterruptedException {
        room.acquire();
        Thread.ofVirtual().start(() -> {
            try {
                Appended outcome = ledger.append(appends);
                if (!(outcome instanceof Appended.Stored)) {
                    failed.set(outcome.toString());
                }
            } catch (RuntimeException failure) {
                failed.set(failure.toString());
            } finally {
                room.release();
            }
        });
    }

    /** The kits of the demo's past that are closed, with their closed travellers; copies are not copied again. */
    private List<Original> originals() {
        Map<KitId, List<Card>> closed = travellers.ended(1_000).stream()
                .filter(card -> !card.id().value().startsWith("T-C"))
                .collect(Collectors.groupingBy(card -> card.traveller().kit(), TreeMap::new, Collectors.toList()));
        List<Original> originals = new ArrayList<>();
        closed.forEach((kit, cards) -> {
            if (kits.find(kit).filter(found -> found.state().closed()).isPresent()) {
                originals.add(original(kit, cards));
            }
        });
        if (originals.isEmpty()) {
            throw new IllegalStateException("no closed kit to copy");
        }
        return originals;
    }

    private Original original(KitId kit, List<Card> cards) {
        List<List<Entry>> records = new ArrayList<>(List.of(ledger.read(StreamName.of("kit", kit))));
        List<String> labels = cards.stream().map(card -> card.id().value()).toList();
        labels.forEach((String label) -> records.add(ledger.read(StreamName.of("traveller", new TravellerId(label)))));
        return new Original(kit.value(), labels, records);
    }
}
