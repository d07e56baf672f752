package brightseam.evidence.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.evidence.Samples;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyFileTest {

    private static final Instant MADE = Instant.parse("2031-03-05T12:00:00Z");
    private static final String KEY = Samples.key();

    @TempDir
    private Path folder;
    private Path json;

    private record Ran(int status, String said) {}

    @BeforeEach
    void write() throws IOException {
        json = Files.write(folder.resolve("evidence.json"), Samples.file());
    }

    private static Ran run(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int status = VerifyFile.run(Arrays.stream(arguments).map(Object::toString).toList(),
                new PrintStream(out, true, StandardCharsets.UTF_8));
        return new Ran(status, out.toString(StandardCharsets.UTF_8));
    }

    /** Pages as a print has them, as far as the check looks at them. */
    private static byte[] pages(String... lines) throws IOException {
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 8);
                content.beginText();
                content.newLineAtOffset(20, 800);
                content.setLeading(12);
                for (String line : lines) {
                    content.showText(line);
                    content.newLine();
                }
                content.endText();
            }
            document.save(out);
            return out.toByteArray();
        }
    }

    private static String[] lines() {
        return new String[] {"Traveller T-1042", "Times: wall clock of the zone Z; holds", "Ida Quell - stamp Q-03"
                + " performed as written, 4 Mar 2031 09:16:30", "Ida Quell inspected, 4 Mar 2031 09:18:30",
                "SHA-256 " + Samples.lastHash()};
    }

    private Path pdf(String... lines) throws IOException {
        return Files.write(folder.resolve("record.pdf"), PdfAttachment.attach(pages(lines),
                PdfAttachment.name("T-1042"), Samples.file(), PdfAttachment.calendar(MADE)));
    }

    @Test
    void a_file_is_proven_by_a_key_given_as_text_or_as_a_file() throws IOException {
        assertThat(run(json, "--key", KEY)).satisfies(ran -> {
            assertThat(ran.status()).isZero();
            assertThat(ran.said()).startsWith("PROVEN by the key that was given");
        });
        Path keys = Files.writeString(folder.resolve("shop.key"), "# two keys\n" + Samples.otherKey()
                + "\n" + KEY + "\n");
        assertThat(run("--key", keys, json).status()).isZero();
    }

    @Test
    void without_a_key_it_ends_with_3_and_with_another_shops_key_with_1() {
        assertThat(run(json)).satisfies(ran -> {
            assertThat(ran.status()).isEqualTo(3);
            assertThat(ran.said()).contains("NOBODY VOUCHES FOR IT");
        });
        assertThat(run(json, "--key", Samples.otherKey())).satisfies(ran -> {
            assertThat(ran.status()).isEqualTo(1);
            assertThat(ran.said()).contains("No key that was given");
        });
    }

    @Test
    void what_was_not_asked_right_ends_with_2_and_says_how_to_ask() throws IOException {
        Path nothing = Files.writeString(folder.resolve("nothing.key"), "# none\n");
        List<List<Object>> questions = List.of(List.of(), List.of(json, json), List.of(folder.resolve("missing.json")),
                List.of(json, "--key"), List.of(json, "--key", "no-key"), List.of(json, "--key", nothing),
                List.of(json, "--zone", "Nowhere"), List.of(json, "--server", "x"), List.of(folder));
        for (List<Object> question : questions) {
            assertThat(run(question.toArray())).as(question.toString()).satisfies(ran -> {
                assertThat(ran.status()).isEqualTo(2);
                assertThat(ran.said()).contains("usage: verify FILE");
            });
        }
    }

    @Test
    void a_print_is_checked_by_the_evidence_attached_to_it_in_the_zone_that_its_pages_name() throws IOException {
        assertThat(run(pdf(lines()), "--key", KEY)).satisfies(ran -> {
            assertThat(ran.said()).contains("times of Z");
            assertThat(ran.status()).isZero();
        });
        assertThat(run(pdf(lines()), "--key", KEY, "--zone", "Europe/Oslo").said())
                .contains("4 Mar 2031 10:16:30", "times of Europe/Oslo");
    }

    @Test
    void pages_on_which_a_signature_was_altered_do_not_fit() throws IOException {
        assertThat(run(pdf(lines()[0], lines()[1], lines()[2], lines()[4]), "--key", KEY)).satisfies(ran -> {
            assertThat(ran.status()).isEqualTo(1);
            assertThat(ran.said()).contains("do not show entry 4, signed by Ida Quell at 4 Mar 2031 09:18:30");
        });
        assertThat(run(pdf(lines()[0], lines()[1], lines()[2], lines()[3]), "--key", KEY).said())
                .contains("do not show the last hash");
        assertThat(run(pdf("nothing"), "--key", KEY).said()).contains("do not show traveller T-1042");
    }

    @Test
    void a_pdf_without_evidence_or_with_two_files_of_it_is_refused() throws IOException {
        Path bare = Files.write(folder.resolve("bare.pdf"), pages(lines()));
        assertThat(run(bare, "--key", KEY)).satisfies(ran -> {
            assertThat(ran.status()).isEqualTo(1);
            assertThat(ran.said()).contains("has 0 files of evidence attached");
        });
        byte[] cut = Files.readAllBytes(pdf(lines()));
        assertThat(run(Files.write(folder.resolve("cut.pdf"), Arrays.copyOf(cut, cut.length / 2))).status())
                .isEqualTo(1);
    }

    /**
     * The compressed stream is where the evidence lies. Its last byte before the check sum of four ends with bits that
     * mean nothing (RFC 1951, section 3.2.3: what follows the last block's end code): there alone a flip may change
     * nothing of the evidence.
     */
    @Test
    void no_flipped_byte_of_the_attached_evidence_is_taken_for_the_print_that_was_made() throws IOException {
        byte[] print = Files.readAllBytes(pdf(lines()));
        int[] stream = stream(print);
        List<Integer> accepted = new ArrayList<>();
        Random random = new Random(1042);
        for (int at = stream[0]; at < stream[1]; at++) {
            byte[] flipped = print.clone();
            flipped[at] ^= (byte) (1 << random.nextInt(8));
            if (at != stream[1] - 5 && isTaken(flipped)) {
                accepted.add(at);
            }
        }
        assertThat(accepted).as("bytes from " + stream[0] + " to " + stream[1]).isEmpty();
    }

    private static boolean isTaken(byte[] print) {
        try {
            return Arrays.equals(PdfAttachment.open(print).evidence(), Samples.file());
        } catch (IOException damaged) {
            return false;
        }
    }

    /** Where the longest stream of the PDF begins and ends, which is the evidence. */
    private static int[] stream(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getCOSObject().getCOSArray(
                    org.apache.pdfbox.cos.COSName.getPDFName("AF"))).isNotNull();
        }
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        int[] longest = {0, 0};
        for (int at = text.indexOf("\nstream"); at >= 0; at = text.indexOf("\nstream", at + 1)) {
            int begin = at + "\nstream".length() + (text.charAt(at + 7) == '\r' ? 2 : 1);
            int end = text.indexOf("endstream", begin);
            while (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r') {
                end--;
            }
            if (end - begin > longest[1] - longest[0]) {
                longest = new int[] {begin, end};
            }
        }
        return longest;
    }

    @Test
    void a_file_that_no_entry_names_is_told() throws IOException {
        Path text = Files.writeString(folder.resolve("procedure.yaml"), Samples.procedureText());
        assertThat(run(json, "--key", KEY, "--with", text).status()).isZero();
        Path photo = Files.writeString(folder.resolve("photo.jpg"), "another");
        assertThat(run(json, "--key", KEY, "--with", photo)).satisfies(ran -> {
            assertThat(ran.status()).isEqualTo(1);
            assertThat(ran.said()).contains("No entry names photo.jpg");
        });
    }

    @Test
    void paper_and_file_are_matched_by_what_a_scanner_reads() {
        assertThat(run(json, "--key", KEY, "--mark", Samples.mark()).said()).contains("The paper belongs to this file");
        assertThat(run(json, "--key", KEY, "--mark", Samples.mark().replace("T-1042", "T-1099")).status()).isEqualTo(1);
    }
}
