package brightseam.ui.admin;

import brightseam.ledger.shell.OnDisk;
import brightseam.people.Role;
import brightseam.scan.shell.NoticePrinter;
import brightseam.seal.SignedNote;
import brightseam.seal.shell.Seals;
import brightseam.seal.shell.Seals.BackDated;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import brightseam.seal.shell.Seals.WitnessState;
import brightseam.ui.desk.Desk;
import brightseam.ui.desk.DeskPage;
import brightseam.ui.desk.DeskTable;
import brightseam.ui.desk.Files;
import brightseam.ui.desk.Forms;
import brightseam.ui.desk.Pulse;
import brightseam.ui.desk.TwoPresses;
import brightseam.ui.parts.Chart;
import brightseam.ui.parts.Drawn;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Pre;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;

/** How the ledger is sealed: the public key for the wall, keys, heads, witnesses, entries that say an odd time. */
@Route("shop/seals")
@PageTitle("Seals")
@RolesAllowed({"ADMINISTRATOR", "INSPECTOR"})
class SealsView extends DeskPage {

    private static final Duration BEAT = Duration.ofSeconds(2);
    private static final int HEADS_SHOWN = 12;
    private static final int HEADS_IN_FILE = 10_000;
    private static final int ENTRIES_LOOKED_AT = 2_000;

    private final Seals seals;
    private final OnDisk onDisk;
    private final NoticePrinter printer;
    private final String shopName;
    private final SealWords words;
    private final Paragraph standing = new Paragraph();
    private final Div key = new Div();
    private final DeskTable<KeyInUse> keys = new DeskTable<KeyInUse>(
            "Every key that ever signed, the newest on top", "No key was made yet.")
            .text("Key", use -> use.key().idHex())
            .text("State", use -> words().standing(use))
            .text("Made", use -> words().stamp(use.from()))
            .data("key", use -> use.key().text());
    private final DeskTable<Sealed> heads = new DeskTable<Sealed>(
            "The last heads, the newest on top", "Nothing was sealed yet. The first entry is, within a second.")
            .text("Entries", head -> "1 to " + head.size())
            .text("Sealed", head -> words().stamp(head.at()))
            .text("Root", head -> head.root().hex().substring(0, 16) + "…")
            .text("Signed by", SealsView::signers)
            .data("root", head -> head.root().hex());
    private final DeskTable<WitnessState> witnesses = new DeskTable<WitnessState>(
            "Second places that heads are sent to",
            "Heads are kept on this server alone. Whoever looks after it names a file share or an address in"
                    + " brightseam.witness; then nobody can take back here what was sealed there.")
            .text("Place", WitnessState::place)
            .text("State", witness -> words().standing(witness));
    private final DeskTable<BackDated> odd = new DeskTable<BackDated>(
            "Entries that say an earlier time than they came in at, among the last 2,000",
            "Every one of the last 2,000 entries came in within a minute of the time that it says.")
            .text("Entry", note -> String.valueOf(note.entry().position()))
            .text("What", note -> note.entry().type() + " in " + note.entry().stream())
            .text("Time", note -> words().note(note));

    SealsView(Desk desk, Seals seals, OnDisk onDisk, NoticePrinter printer, Pulse pulse,
            @Value("${brightseam.shop-name:Brightseam}") String shopName) {
        super(desk, "Seals");
        this.seals = seals;
        this.onDisk = onDisk;
        this.printer = printer;
        this.shopName = shopName;
        this.words = new SealWords(desk.zone());
        key.addClassName("desk-row");
        List<Component> panels = new ArrayList<>(List.of(
                Forms.panel("Is everything sealed?", standing, Forms.row(Forms.button("Look again", this::refresh))),
                Forms.panel("The public key", key),
                Forms.panel("Heads", heads), Forms.panel("Witnesses", witnesses, sending()),
                Forms.panel("Odd times", Forms.note("Late entries are allowed and say themselves that they are late;"
                        + " a clock that was set shows here too. Ask about any other."), odd),
                Forms.panel("Keys", keys)));
        if (desk.holds(Role.ADMINISTRATOR)) {
            panels.add(Forms.panel("Another key", rotation()));
        }
        show(panels.toArray(Component[]::new));
        refresh();
        pulse.every(this, BEAT, this::stand);
    }

    private SealWords words() {
        return words;
    }

    private void stand() {
        standing.setText(words.standing(seals.latest(), onDisk.position(), seals.trouble()));
    }

    private void refresh() {
        stand();
        List<KeyInUse> all = seals.keys().reversed();
        keys.show(all);
        heads.whole(() -> seals.last(HEADS_IN_FILE)).show(seals.last(HEADS_SHOWN));
        witnesses.show(seals.witnesses());
        odd.show(seals.backDated(Math.max(0, onDisk.position() - ENTRIES_LOOKED_AT), ENTRIES_LOOKED_AT).reversed());
        key.removeAll();
        all.stream().findFirst().ifPresent(use -> key.add(
                new Chart(new Drawn(NoticePrinter.svg(use.key().text(), "The public key as a QR code"),
                        "The public key as a QR code")), about(use)));
    }

    private Div about(KeyInUse use) {
        Pre text = new Pre(String.join("\n", SealWords.parts(use.key())));
        return new Div(text, Forms.note("Whoever has this text can check a record of this shop without asking the shop."
                        + " Pin it on the wall; send it to customers and auditors."),
                Files.pdf("Sheet for the wall", "public-key-" + use.key().idHex() + ".pdf", () -> printer.sheet(
                        desk().isDemo() ? "Our public key (DEMO)" : "Our public key", use.key().text(),
                        words.sheet(shopName, use))));
    }

    private Component sending() {
        return Forms.row(Forms.button("Send the newest head now", () -> {
            seals.sendToWitnesses();
            refresh();
        }));
    }

    private Div rotation() {
        return new Div(Forms.note("A new key takes over. Both sign for a while, so that whoever has the old one can"
                        + " follow: the change itself stands in the ledger under both signatures. Print the new sheet"
                        + " for the wall."),
                TwoPresses.withReason("Change the key", "that signs the ledger", reason -> rotate(false, reason)),
                Forms.note("Where a key is lost, or somebody else may have it, the old one signs no more at once, and"
                        + " everybody who has the old sheet has to be given the new one in person."),
                TwoPresses.withReason("The key is lost", "or somebody else may have it",
                        reason -> rotate(true, reason)));
    }

    private void rotate(boolean isLost, String reason) {
        told().guarded(() -> told().outcome(() -> seals.rotate(isLost, reason, desk().origin())))
                .ifPresent(history -> {
                    told().done("Key changed", "The new key signs from the next head on. Print its sheet.");
                    refresh();
                });
    }

    private static String signers(Sealed head) {
        return SignedNote.parse(head.note()).map(note -> note.lines().stream()
                .map(line -> java.util.HexFormat.of().formatHex(line.id()))
                .collect(Collectors.joining(", "))).orElse("");
    }
}
