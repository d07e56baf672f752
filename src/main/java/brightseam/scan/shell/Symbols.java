package brightseam.scan.shell;

import brightseam.scan.LabelSymbol;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.datamatrix.DataMatrixWriter;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** Makes the modules of a symbol, one matrix element each, without quiet zone. */
final class Symbols {

    private Symbols() {}

    /**
     * The modules for {@code text}. In Data Matrix an envelope of format 06 shrinks to the one codeword macro 06, which
     * a reader writes out in full again.
     */
    static BitMatrix modules(String text, LabelSymbol symbol) {
        return switch (symbol) {
            case DATA_MATRIX -> new DataMatrixWriter().encode(text, BarcodeFormat.DATA_MATRIX, 0, 0,
                    Map.of(EncodeHintType.DATA_MATRIX_SHAPE, SymbolShapeHint.FORCE_SQUARE));
            case QR -> qr(text);
        };
    }

    /**
     * Modules left white around a symbol. The standards ask for 1 around Data Matrix and 4 around QR; 2 around Data
     * Matrix leaves room for a crooked cut.
     */
    static int quietZoneModules(LabelSymbol symbol) {
        return switch (symbol) {
            case DATA_MATRIX -> 2;
            case QR -> 4;
        };
    }

    private static BitMatrix qr(String text) {
        try {
            return new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0,
                    Map.of(EncodeHintType.MARGIN, 0, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("longer than a QR code holds", tooLong);
        }
    }
}
