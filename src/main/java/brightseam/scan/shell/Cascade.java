package brightseam.scan.shell;

import brightseam.scan.SymbologyIdentifier;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.Reader;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import com.google.zxing.oned.MultiFormatOneDReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * One attempt after the other, the cheapest first, until a code is found.
 *
 * <p>Data Matrix and QR correct and check errors, so the first reading counts. Code 128 and Code 39 check little or
 * nothing: a linear code counts only when two different attempts agree.
 */
final class Cascade {

    /** What was found. */
    record Found(String text, Optional<SymbologyIdentifier> symbology) {}

    /** FNC1 of Code 128 comes out as GS only with this hint; Data Matrix and QR give GS by themselves. */
    private static final Map<DecodeHintType, Object> HINTS = Map.of(
            DecodeHintType.TRY_HARDER, true,
            DecodeHintType.ASSUME_GS1, true,
            DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.CODE_128, BarcodeFormat.CODE_39));

    private static final List<Function<LuminanceSource, Binarizer>> BINARIZERS =
            List.of(HybridBinarizer::new, GlobalHistogramBinarizer::new);

    /** Pixels on a side above which a picture is not enlarged: it would take long. */
    private static final int ENLARGED_SIDE_MAX = 800;

    private static final double WINDOW_FRACTION = 0.62;

    private final GreyImage picture;

    Cascade(GreyImage picture) {
        this.picture = picture;
    }

    Optional<Found> read() {
        return Stream.concat(forms().stream(), windows()).map(this::matrix)
                .flatMap(Optional::stream).findFirst().or(this::linear);
    }

    /** Parts off the middle, because the Data Matrix reader finds a symbol only if it lies over the middle. */
    private Stream<Supplier<GreyImage>> windows() {
        int side = Math.max(1, (int) Math.round(Math.min(
                Math.min(picture.width(), picture.height()),
                Math.max(picture.width(), picture.height()) * WINDOW_FRACTION)));
        int right = picture.width() - side;
        int bottom = picture.height() - side;
        return Stream.of(new int[] {0, 0}, new int[] {right, 0}, new int[] {0, bottom}, new int[] {right, bottom})
                .map(corner -> () -> picture.window(corner[0], corner[1], side, side));
    }

    /**
     * The picture as it is, then what each fault asks for. Turned, because the Data Matrix reader looks for an upright
     * white border and text beside a slanted symbol lies in its way; smoothed against noise; enlarged and sharpened
     * against blur and distance. Measured with the read-rate bench, in this order.
     */
    private List<Supplier<GreyImage>> forms() {
        GreyImage large = picture.width() <= ENLARGED_SIDE_MAX && picture.height() <= ENLARGED_SIDE_MAX
                ? picture.doubled() : picture;
        return List.of(
                () -> picture,
                () -> picture.turned(45),
                () -> picture.smoothed(1),
                () -> large.sharpened(6),
                () -> large,
                () -> picture.turned(22.5),
                () -> picture.turned(67.5),
                () -> picture.smoothed(1).turned(45),
                () -> large.sharpened(6).turned(45),
                () -> large.turned(22.5),
                () -> large.turned(67.5),
                () -> picture.smoothed(1).levelled(20),
                () -> picture.smoothed(1).levelled(20).turned(45),
                picture::halved);
    }

    private Optional<Found> matrix(Supplier<GreyImage> form) {
        LuminanceSource source = form.get().luminance();
        for (Function<LuminanceSource, Binarizer> binarizer : BINARIZERS) {
            BinaryBitmap bitmap = new BinaryBitmap(binarizer.apply(source));
            Optional<Result> result = attempt(new DataMatrixReader(), bitmap)
                    .or(() -> attempt(new QRCodeReader(), bitmap));
            if (result.isPresent()) {
                return result.map(Cascade::found);
            }
        }
        return Optional.empty();
    }

    private Optional<Found> linear() {
        Set<Found> once = new HashSet<>();
        for (GreyImage image : List.of(picture, picture.turned())) {
            for (Function<LuminanceSource, Binarizer> binarizer : BINARIZERS) {
                Optional<Found> found = attempt(
                        new MultiFormatOneDReader(HINTS), new BinaryBitmap(binarizer.apply(image.luminance())))
                        .map(Cascade::found);
                if (found.isPresent() && !once.add(found.get())) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Result> attempt(Reader reader, BinaryBitmap bitmap) {
        try {
            return Optional.of(reader.decode(bitmap, HINTS));
        } catch (ReaderException | RuntimeException nothing) {
            // A runtime exception is a fault of the library on some odd pattern: as good as nothing seen.
            return Optional.empty();
        }
    }

    private static Found found(Result result) {
        Object symbology = result.getResultMetadata() == null
                ? null : result.getResultMetadata().get(ResultMetadataType.SYMBOLOGY_IDENTIFIER);
        String text = result.getText();
        Optional<SymbologyIdentifier> identifier = symbology == null
                ? Optional.empty() : SymbologyIdentifier.leading(symbology.toString());
        boolean twice = identifier.isPresent() && text.startsWith(identifier.get().toString());
        return new Found(twice ? text.substring(3) : text, identifier);
    }
}
