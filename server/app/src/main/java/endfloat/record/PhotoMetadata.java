package endfloat.record;

import endfloat.record.RecordException.Reason;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Leaves out of a photograph all that is not the picture: where and when it was taken and with
 * what. Kept are the picture's own data, its colours, and which way up it is.
 *
 * <p>What is kept is listed, not what is left out, so that a kind of data nobody thought of stays
 * out. Layout of the files: ITU-T T.81 annex B, CIPA DC-008 (Exif), ISO/IEC 15948 (PNG).
 */
public final class PhotoMetadata {
  private static final Set<String> CHUNKS =
      Set.of(
          "IHDR", "PLTE", "tRNS", "IDAT", "IEND", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "pHYs",
          "bKGD");

  private static final int START = 0xd8;
  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int APP0 = 0xe0;
  private static final int APP1 = 0xe1;
  private static final int APP2 = 0xe2;
  private static final int APP14 = 0xee;
  private static final int APP15 = 0xef;
  private static final int COMMENT = 0xfe;

  private static final int ORIENTATION = 0x0112;

  private final byte[] bytes;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private int at;

  private PhotoMetadata(byte[] bytes) {
    this.bytes = bytes;
  }

  /**
   * The photograph without it; the bytes given are left as they are.
   *
   * @throws RecordException if it is no JPEG or PNG, or breaks off
   */
  public static byte[] stripped(byte[] photograph) {
    PhotoMetadata photo = new PhotoMetadata(photograph);
    try {
      switch (Photographs.kind(photograph).orElse("")) {
        case "jpg" -> photo.jpeg();
        case "png" -> photo.png();
        default -> throw broken();
      }
    } catch (IndexOutOfBoundsException e) {
      throw broken();
    }
    return photo.out.toByteArray();
  }

  private static RecordException broken() {
    return new RecordException(
        Reason.NOT_A_RECORD, "the photograph cannot be read; save it anew as JPEG or PNG");
  }

  private int number(int from, int count) {
    int number = 0;
    for (int i = 0; i < count; i++) {
      number = number << 8 | (bytes[from + i] & 0xff);
    }
    return number;
  }

  private void copy(int from, int to) {
    if (from < 0 || to > bytes.length || to < from) {
      throw broken();
    }
    out.write(bytes, from, to - from);
  }

  private void png() {
    copy(0, 8);
    at = 8;
    while (true) {
      int length = number(at, 4);
      if (length < 0 || length > bytes.length - at - 12) {
        throw broken();
      }
      String type = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
      if (CHUNKS.contains(type)) {
        copy(at, at + 12 + length);
      }
      at += 12 + length;
      if (type.equals("IEND")) {
        return; // what hangs on behind the end is no picture
      }
    }
  }

  private void jpeg() {
    copy(0, 2);
    at = 2;
    int orientation = orientation();
    if (orientation > 1) {
      out.writeBytes(upright(orientation));
    }
    while (true) {
      int marker = marker();
      if (marker == END) {
        out.write(0xff);
        out.write(END);
        return;
      }
      int length = number(at, 2);
      if (length < 2) {
        throw broken();
      }
      if (isKept(marker)) {
        copy(at - 2, at + length);
      }
      at += length;
      if (marker == SCAN) {
        scan();
      }
    }
  }

  /** Goes to the next marker, over fill bytes, and behind it. */
  private int marker() {
    if (number(at, 1) != 0xff) {
      throw broken();
    }
    while (number(at, 1) == 0xff) {
      at++;
    }
    int marker = number(at, 1);
    at++;
    if (marker == 0 || marker == START || isRestart(marker)) {
      throw broken();
    }
    // a marker is written with one fill byte before it
    return marker;
  }

  private static boolean isRestart(int marker) {
    return marker >= 0xd0 && marker <= 0xd7;
  }

  /** Coded data, up to the next marker that is neither a stuffed byte nor a restart. */
  private void scan() {
    int from = at;
    while (true) {
      if (number(at, 1) == 0xff) {
        int next = number(at + 1, 1);
        if (next != 0 && next != 0xff && !isRestart(next)) {
          copy(from, at);
          return;
        }
      }
      at++;
    }
  }

  private boolean isKept(int marker) {
    if (marker == APP0) {
      return says("JFIF\0");
    }
    if (marker == APP2) {
      return says("ICC_PROFILE\0");
    }
    if (marker == APP14) {
      return says("Adobe");
    }
    return marker != COMMENT && (marker < APP0 || marker > APP15);
  }

  private boolean says(String mark) {
    byte[] wanted = mark.getBytes(StandardCharsets.ISO_8859_1);
    for (int i = 0; i < wanted.length; i++) {
      if (at + 2 + i >= bytes.length || bytes[at + 2 + i] != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  /** Which way up the camera held the picture, 1 to 8; 1 where it does not say. */
  private int orientation() {
    int before = at;
    try {
      while (true) {
        int marker = marker();
        if (marker == SCAN || marker == END) {
          return 1;
        }
        if (marker == APP1 && says("Exif\0\0")) {
          return orientation(at + 8, number(at, 2) - 8);
        }
        at += number(at, 2);
      }
    } finally {
      at = before;
    }
  }

  private int orientation(int start, int length) {
    try {
      ByteBuffer exif = ByteBuffer.wrap(bytes, start, length).slice();
      exif.order(exif.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      int directory = exif.getInt(4);
      int entries = exif.getShort(directory) & 0xffff;
      for (int i = 0; i < entries; i++) {
        int entry = directory + 2 + 12 * i;
        if ((exif.getShort(entry) & 0xffff) == ORIENTATION) {
          int way = exif.getShort(entry + 8);
          return way >= 1 && way <= 8 ? way : 1;
        }
      }
    } catch (IndexOutOfBoundsException e) {
      // damaged Exif says nothing; the picture is shown as it is stored
      return 1;
    }
    return 1;
  }

  /** The smallest Exif segment that says which way up. */
  private static byte[] upright(int orientation) {
    ByteBuffer segment = ByteBuffer.allocate(36);
    segment.put((byte) 0xff).put((byte) APP1).putShort((short) 34);
    segment.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
    segment.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    segment.putShort((short) 1);
    segment.putShort((short) ORIENTATION).putShort((short) 3).putInt(1);
    segment.putShort((short) orientation).putShort((short) 0);
    segment.putInt(0);
    return segment.array();
  }
}
