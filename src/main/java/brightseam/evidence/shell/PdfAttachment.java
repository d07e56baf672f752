package brightseam.evidence.shell;

import brightseam.evidence.EvidenceForm;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The file of evidence inside a PDF, as an associated file of the document: ISO 32000-2, section 14.13, which PDF/A-3
 * asks for. The stream is compressed, and read back strictly, its check sum included.
 */
final class PdfAttachment {

    private static final String FORM = "evidence-";
    private static final String TYPE = "application/json";

    private PdfAttachment() {}

    /** What a PDF holds. */
    record Opened(byte[] evidence, String pages) {}

    /** The name under which the evidence of {@code traveller} is attached. */
    static String name(Object traveller) {
        return FORM + traveller + ".json";
    }

    /** {@code pdf} with {@code evidence} attached as {@code name}. */
    static byte[] attach(byte[] pdf, String name, byte[] evidence, Calendar made) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(evidence),
                    COSName.FLATE_DECODE);
            file.setSubtype(TYPE);
            file.setSize(evidence.length);
            file.setModDate(made);
            PDComplexFileSpecification specification = new PDComplexFileSpecification();
            specification.setFile(name);
            specification.setFileUnicode(name);
            specification.setFileDescription("Entries, proofs and signed head of the ledger");
            specification.setEmbeddedFile(file);
            specification.setEmbeddedFileUnicode(file);
            specification.getCOSObject().setName(COSName.getPDFName("AFRelationship"), "Data");
            PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
            tree.setNames(Map.of(name, specification));
            PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
            names.setEmbeddedFiles(tree);
            document.getDocumentCatalog().setNames(names);
            COSArray associated = new COSArray();
            associated.add(specification);
            document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
            document.save(out);
            return out.toByteArray();
        }
    }

    /**
     * The evidence in {@code pdf} and the text of its pages.
     *
     * @throws IOException where it is no PDF, has no evidence or more than one, or the stream is damaged
     */
    static Opened open(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<COSStream> found = new ArrayList<>();
            PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
            if (names != null && names.getEmbeddedFiles() != null) {
                all(names.getEmbeddedFiles().getNames()).forEach((name, file) -> {
                    if (name.startsWith(FORM) && file.getEmbeddedFile() != null) {
                        found.add(file.getEmbeddedFile().getCOSObject());
                    }
                });
            }
            if (found.size() != 1) {
                throw new IOException("the PDF has " + found.size() + " files of evidence attached, not one");
            }
            return new Opened(inflated(found.getFirst()), new PDFTextStripper().getText(document));
        } catch (RuntimeException broken) {
            throw new IOException("the PDF is damaged: " + broken.getMessage(), broken);
        }
    }

    private static Map<String, PDComplexFileSpecification> all(Map<String, PDComplexFileSpecification> names) {
        return names == null ? Map.of() : new TreeMap<>(names);
    }

    /** Every byte of the stream has to be used and its check sum (RFC 1950) to fit; readers of PDF pass over that. */
    private static byte[] inflated(COSStream stream) throws IOException {
        COSBase filter = stream.getFilters();
        if (!COSName.FLATE_DECODE.equals(filter) || stream.getDictionaryObject(COSName.DECODE_PARMS)
                instanceof COSDictionary) {
            throw new IOException("the attached evidence is not compressed in the one way that is read here");
        }
        Inflater inflater = new Inflater();
        try (InputStream raw = stream.createRawInputStream()) {
            byte[] compressed = raw.readAllBytes();
            inflater.setInput(compressed);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] part = new byte[1 << 16];
            while (!inflater.finished()) {
                int length = inflater.inflate(part);
                if (length == 0 || out.size() > EvidenceForm.BYTES_MAX) {
                    throw new IOException("the attached evidence is cut short or too long");
                }
                out.write(part, 0, length);
            }
            if (inflater.getRemaining() > 0) {
                throw new IOException("something follows the attached evidence");
            }
            return out.toByteArray();
        } catch (DataFormatException damaged) {
            throw new IOException("the attached evidence is damaged: " + damaged.getMessage(), damaged);
        } finally {
            inflater.end();
        }
    }

    /** The moment as PDF writes it, in UTC. */
    static Calendar calendar(java.time.Instant at) {
        Calendar calendar = Calendar.getInstance(TimeZone.getTimeZone("UTC"));
        calendar.setTimeInMillis(at.toEpochMilli());
        return calendar;
    }
}
