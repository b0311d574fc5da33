package rungbook.pack;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.util.List;

/** Rows of modules as a picture, with the quiet zone of four modules that the standard asks for. */
final class QrPicture {

  private static final int PIXELS = 4;
  private static final int QUIET = 4;
  private static final int WHITE = 0xffffff;

  private QrPicture() {}

  static BinaryBitmap of(List<String> rows) {
    int side = (rows.size() + 2 * QUIET) * PIXELS;
    var image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        image.setRGB(x, y, isDark(rows, x / PIXELS - QUIET, y / PIXELS - QUIET) ? 0 : WHITE);
      }
    }
    return new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image)));
  }

  private static boolean isDark(List<String> rows, int x, int y) {
    return y >= 0 && y < rows.size() && x >= 0 && x < rows.size() && rows.get(y).charAt(x) == '1';
  }
}
