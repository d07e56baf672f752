package brightseam.scan.shell;

import brightseam.scan.AimingFrame;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.function.LongBinaryOperator;

/**
 * A picture in grey, one byte a pixel, rows from the top.
 *
 * @param pixels not to be changed
 */
record GreyImage(byte[] pixels, int width, int height) {

    static GreyImage of(BufferedImage image) {
        BufferedImage grey = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = grey.createGraphics();
        graphics.drawImage(image, 0, 0, null);
        graphics.dispose();
        byte[] pixels = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
        return new GreyImage(pixels, image.getWidth(), image.getHeight());
    }

    GreyImage crop(AimingFrame frame) {
        int cropWidth = Math.max(1, (int) Math.round(width * frame.widthFraction()));
        int cropHeight = Math.max(1, (int) Math.round(height * frame.heightFraction()));
        return window((width - cropWidth) / 2, (height - cropHeight) / 2, cropWidth, cropHeight);
    }

    /** The part whose upper left corner lies at {@code left} and {@code top}; has to lie inside. */
    GreyImage window(int left, int top, int cropWidth, int cropHeight) {
        byte[] cropped = new byte[cropWidth * cropHeight];
        for (int y = 0; y < cropHeight; y++) {
            System.arraycopy(pixels, (top + y) * width + left, cropped, y * cropWidth, cropWidth);
        }
        return new GreyImage(cropped, cropWidth, cropHeight);
    }

    /** Twice as wide and high, the pixels between by straight lines. */
    GreyImage doubled() {
        int wide = width * 2;
        byte[] larger = new byte[wide * height * 2];
        for (int y = 0; y < height * 2; y++) {
            int y0 = Math.max(0, (y - 1) / 2);
            int y1 = Math.min(height - 1, y0 + 1);
            int lower = y % 2 == 1 ? 1 : 3;
            for (int x = 0; x < wide; x++) {
                int x0 = Math.max(0, (x - 1) / 2);
                int x1 = Math.min(width - 1, x0 + 1);
                int right = x % 2 == 1 ? 1 : 3;
                int above = at(x0, y0) * (4 - right) + at(x1, y0) * right;
                int below = at(x0, y1) * (4 - right) + at(x1, y1) * right;
                larger[y * wide + x] = (byte) ((above * (4 - lower) + below * lower) / 16);
            }
        }
        return new GreyImage(larger, wide, height * 2);
    }

    /** Half as wide and high, each pixel the mean of four. */
    GreyImage halved() {
        int wide = Math.max(1, width / 2);
        int high = Math.max(1, height / 2);
        byte[] smaller = new byte[wide * high];
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                int x1 = Math.min(width - 1, 2 * x + 1);
                int y1 = Math.min(height - 1, 2 * y + 1);
                smaller[y * wide + x] = (byte) ((at(2 * x, 2 * y) + at(x1, 2 * y) + at(2 * x, y1) + at(x1, y1)) / 4);
            }
        }
        return new GreyImage(smaller, wide, high);
    }

    /** A quarter turn counter-clockwise. */
    GreyImage turned() {
        byte[] turned = new byte[pixels.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                turned[(width - 1 - x) * height + y] = pixels[y * width + x];
            }
        }
        return new GreyImage(turned, height, width);
    }

    /** Turned by {@code degrees} about the middle, same size; what turns in from outside repeats the edge. */
    GreyImage turned(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        byte[] turned = new byte[pixels.length];
        double middleX = (width - 1) / 2.0;
        double middleY = (height - 1) / 2.0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double fromX = middleX + (x - middleX) * cos - (y - middleY) * sin;
                double fromY = middleY + (x - middleX) * sin + (y - middleY) * cos;
                turned[y * width + x] = (byte) between(fromX, fromY);
            }
        }
        return new GreyImage(turned, width, height);
    }

    private int between(double x, double y) {
        double inX = Math.clamp(x, 0, width - 1.0);
        double inY = Math.clamp(y, 0, height - 1.0);
        int left = (int) inX;
        int top = (int) inY;
        int right = Math.min(width - 1, left + 1);
        int bottom = Math.min(height - 1, top + 1);
        double fractionX = inX - left;
        double fractionY = inY - top;
        double above = at(left, top) * (1 - fractionX) + at(right, top) * fractionX;
        double below = at(left, bottom) * (1 - fractionX) + at(right, bottom) * fractionX;
        return (int) (above * (1 - fractionY) + below * fractionY);
    }

    /** Each pixel the mean of {@code 2 radius + 1} pixels each way, against noise. */
    GreyImage smoothed(int radius) {
        return filtered(radius, (pixel, mean) -> mean);
    }

    /** Light and shade levelled: mid grey, and thrice what differs from the mean around it. */
    GreyImage levelled(int radius) {
        return filtered(radius, (pixel, mean) -> 128 + 3 * (pixel - mean));
    }

    /** Edges made steeper: each pixel thrice, less twice the mean of {@code 2 radius + 1} pixels each way. */
    GreyImage sharpened(int radius) {
        return filtered(radius, (pixel, mean) -> pixel + 2 * (pixel - mean));
    }

    private GreyImage filtered(int radius, LongBinaryOperator made) {
        byte[] filtered = new byte[pixels.length];
        long[] sums = sums();
        int wide = width + 1;
        for (int y = 0; y < height; y++) {
            int top = Math.max(0, y - radius);
            int bottom = Math.min(height, y + radius + 1);
            for (int x = 0; x < width; x++) {
                int left = Math.max(0, x - radius);
                int right = Math.min(width, x + radius + 1);
                long sum = sums[bottom * wide + right] - sums[top * wide + right]
                        - sums[bottom * wide + left] + sums[top * wide + left];
                long mean = sum / ((long) (bottom - top) * (right - left));
                filtered[y * width + x] = (byte) Math.clamp(made.applyAsLong(at(x, y), mean), 0, 255);
            }
        }
        return new GreyImage(filtered, width, height);
    }

    LuminanceSource luminance() {
        return new PlanarYUVLuminanceSource(pixels, width, height, 0, 0, width, height, false);
    }

    private int at(int x, int y) {
        return pixels[y * width + x] & 0xFF;
    }

    /** Sums of all pixels above and left of each corner. */
    private long[] sums() {
        int wide = width + 1;
        long[] sums = new long[wide * (height + 1)];
        for (int y = 0; y < height; y++) {
            long row = 0;
            for (int x = 0; x < width; x++) {
                row += at(x, y);
                sums[(y + 1) * wide + x + 1] = sums[y * wide + x + 1] + row;
            }
        }
        return sums;
    }
}
