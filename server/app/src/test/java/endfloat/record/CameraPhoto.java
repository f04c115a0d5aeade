package endfloat.record;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/**
 * A photograph as a camera writes it: held on its side, with the place where it was taken in its
 * Exif (tags of CIPA DC-008, from memory: 0x8825 leads to the place, 1 to 4 are its latitude and
 * longitude), in XMP, in a comment and behind the end of the picture.
 */
public final class CameraPhoto {
  /** Stands wherever a place is written, so that a test can look for it. */
  public static final String PLACE = "HARBOUR-SHED-7";

  /** Latitude 54° 19' 37" as the Exif holds it. */
  static final byte[] LATITUDE =
      ByteBuffer.allocate(24)
          .putInt(54)
          .putInt(1)
          .putInt(19)
          .putInt(1)
          .putInt(37)
          .putInt(1)
          .array();

  private CameraPhoto() {}

  static byte[] plain(String kind) {
    BufferedImage picture = new BufferedImage(64, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D ink = picture.createGraphics();
    ink.setPaint(new GradientPaint(0, 0, Color.DARK_GRAY, 64, 40, Color.ORANGE));
    ink.fillRect(0, 0, 64, 40);
    ink.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, kind, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** The JPEG with all of it. */
  public static byte[] jpeg() {
    byte[] plain = plain("jpg");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    segment(out, 0xe1, exif());
    segment(out, 0xe1, text("http://ns.adobe.com/xap/1.0/\0<x>" + PLACE + "</x>"));
    segment(out, 0xed, text("Photoshop 3.0\0" + PLACE));
    segment(out, 0xfe, text("taken at " + PLACE));
    out.write(plain, 2, plain.length - 2);
    out.writeBytes(text(PLACE));
    return out.toByteArray();
  }

  private static byte[] text(String words) {
    return words.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static void segment(ByteArrayOutputStream out, int marker, byte[] content) {
    out.write(0xff);
    out.write(marker);
    out.write((content.length + 2) >> 8);
    out.write(content.length + 2);
    out.writeBytes(content);
  }

  private static byte[] exif() {
    ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 30 + 30 + 24);
    exif.put(text("Exif\0\0")).put(text("MM")).putShort((short) 42).putInt(8);
    exif.putShort((short) 2);
    exif.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    exif.putShort((short) 6).putShort((short) 0);
    exif.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
    exif.putInt(0);
    exif.putShort((short) 2);
    exif.putShort((short) 1).putShort((short) 2).putInt(2).put(text("N\0\0\0"));
    exif.putShort((short) 2).putShort((short) 5).putInt(3).putInt(68);
    exif.putInt(0);
    exif.put(LATITUDE);
    return exif.array();
  }
}
