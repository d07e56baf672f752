package brightseam.scan.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.datamatrix.encoder.ErrorCorrection;
import com.google.zxing.datamatrix.encoder.HighLevelEncoder;
import com.google.zxing.datamatrix.encoder.SymbolInfo;
import com.google.zxing.datamatrix.encoder.SymbolShapeHint;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The barcode library against the examples of the symbology standards. */
class SymbologyExamplesTest {

    /** ISO/IEC 16022 Annex I, as open code bases' tests repeat it. */
    @Test
    void data_matrix_123456_is_three_data_and_five_check_codewords_in_ten_by_ten() {
        String data = HighLevelEncoder.encodeHighLevel("123456", SymbolShapeHint.FORCE_SQUARE, null, null);
        SymbolInfo symbol = SymbolInfo.lookup(data.length(), SymbolShapeHint.FORCE_SQUARE);

        assertThat(values(ErrorCorrection.encodeECC200(data, symbol)))
                .containsExactly(142, 164, 186, 114, 25, 5, 88, 102);
        assertThat(symbol.getSymbolWidth()).isEqualTo(10);
    }

    /** An open encoder's published example of the same symbology: 160 82 162 173 173 173 137 224 61 80 82 82. */
    @Test
    void data_matrix_packs_letters_and_digits_as_published() {
        assertThat(values(HighLevelEncoder.encodeHighLevel("30Q324343430794<OQQ")))
                .containsExactly(160, 82, 162, 173, 173, 173, 137, 224, 61, 80, 82, 82);
    }

    /** ISO/IEC 16022: codeword 237 stands for the envelope of format 06. */
    @Test
    void an_envelope_of_format_06_is_one_codeword_of_data_matrix() {
        assertThat(values(HighLevelEncoder.encodeHighLevel("[)>\u001E06\u001DQ2\u001E\u0004"))).startsWith(237);
    }

    /**
     * A published walk through "HELLO WORLD" in version 1-M. The library keeps its codewords to itself, so they are
     * read back out of the symbol: mask taken off, modules taken in the standard's zigzag.
     */
    @Test
    void qr_hello_world_has_the_published_codewords() throws Exception {
        QRCode code = Encoder.encode("HELLO WORLD", ErrorCorrectionLevel.M);

        assertThat(code.getVersion().getVersionNumber()).isEqualTo(1);
        assertThat(codewords(code)).containsExactly(
                32, 91, 11, 120, 209, 114, 220, 77, 67, 64, 236, 17, 236, 17, 236, 17,
                196, 35, 39, 119, 235, 215, 231, 226, 93, 23);
    }

    private static List<Integer> codewords(QRCode code) {
        ByteMatrix matrix = code.getMatrix();
        int side = matrix.getWidth();
        List<Integer> bits = new ArrayList<>();
        boolean upwards = true;
        for (int right = side - 1; right > 0; right -= 2) {
            right = right == 6 ? 5 : right;
            for (int step = 0; step < side; step++) {
                int y = upwards ? side - 1 - step : step;
                for (int x = right; x > right - 2; x--) {
                    if (!isFunction(x, y, side)) {
                        bits.add(matrix.get(x, y) ^ (isMasked(code.getMaskPattern(), x, y) ? 1 : 0));
                    }
                }
            }
            upwards = !upwards;
        }
        List<Integer> codewords = new ArrayList<>();
        for (int at = 0; at + 8 <= bits.size(); at += 8) {
            codewords.add(bits.subList(at, at + 8).stream().reduce(0, (sum, bit) -> sum * 2 + bit));
        }
        return codewords;
    }

    /** Finders with their separators and format bits, and the timing lines, of version 1. */
    private static boolean isFunction(int x, int y, int side) {
        return x < 9 && y < 9 || x >= side - 8 && y < 9 || x < 9 && y >= side - 8 || x == 6 || y == 6;
    }

    private static boolean isMasked(int pattern, int x, int y) {
        return switch (pattern) {
            case 0 -> (y + x) % 2 == 0;
            case 1 -> y % 2 == 0;
            case 2 -> x % 3 == 0;
            case 3 -> (y + x) % 3 == 0;
            case 4 -> (y / 2 + x / 3) % 2 == 0;
            case 5 -> y * x % 2 + y * x % 3 == 0;
            case 6 -> (y * x % 2 + y * x % 3) % 2 == 0;
            case 7 -> ((y + x) % 2 + y * x % 3) % 2 == 0;
            default -> throw new IllegalArgumentException("mask patterns are 0 to 7: " + pattern);
        };
    }

    private static List<Integer> values(String codewords) {
        return codewords.chars().boxed().toList();
    }
}
