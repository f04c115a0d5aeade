package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoMetadataTest {
  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static void assertSamePicture(byte[] wanted, byte[] given) throws IOException {
    BufferedImage one = ImageIO.read(new ByteArrayInputStream(wanted));
    BufferedImage other = ImageIO.read(new ByteArrayInputStream(given));
    int width = one.getWidth();
    int height = one.getHeight();
    assertArrayEquals(
        one.getRGB(0, 0, width, height, null, 0, width),
        other.getRGB(0, 0, width, height, null, 0, width));
  }

  @Test
  void leavesThePlaceOutOfAJpegAndThePictureAsItWas() throws IOException {
    byte[] camera = CameraPhoto.jpeg();
    assertTrue(text(camera).contains(text(CameraPhoto.LATITUDE)), "the place is in the original");
    byte[] before = camera.clone();
    byte[] stripped = PhotoMetadata.stripped(camera);
    assertArrayEquals(before, camera);
    assertFalse(text(stripped).contains(text(CameraPhoto.LATITUDE)));
    assertFalse(text(stripped).contains(CameraPhoto.PLACE));
    assertFalse(text(stripped).contains("adobe"));
    assertSamePicture(CameraPhoto.plain("jpg"), stripped);
  }

  @Test
  void keepsWhichWayUpTheCameraWasHeld() {
    byte[] stripped = PhotoMetadata.stripped(CameraPhoto.jpeg());
    int exif = text(stripped).indexOf("Exif\0\0");
    assertEquals(exif, text(stripped).lastIndexOf("Exif\0\0"));
    // one entry: 0x0112, a short, one of it, 6
    assertArrayEquals(
        new byte[] {0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6},
        Arrays.copyOfRange(stripped, exif + 14, exif + 26));
    assertArrayEquals(stripped, PhotoMetadata.stripped(stripped), "nothing more to leave out");
  }

  @Test
  void aPhotographWithoutAnythingOfTheKindStaysAsItIs() {
    byte[] plain = CameraPhoto.plain("jpg");
    assertArrayEquals(plain, PhotoMetadata.stripped(plain));
  }

  @ParameterizedTest
  @ValueSource(strings = {"eXIf", "tEXt", "iTXt", "zTXt", "tIME", "xyZw"})
  void leavesEveryChunkOutOfAPngThatIsNoPicture(String type) throws IOException {
    byte[] plain = CameraPhoto.plain("png");
    ByteArrayOutputStream camera = new ByteArrayOutputStream();
    camera.write(plain, 0, 33);
    camera.writeBytes(chunk(type, CameraPhoto.PLACE.getBytes(StandardCharsets.ISO_8859_1)));
    camera.write(plain, 33, plain.length - 33);
    camera.writeBytes(CameraPhoto.PLACE.getBytes(StandardCharsets.ISO_8859_1));
    byte[] stripped = PhotoMetadata.stripped(camera.toByteArray());
    assertFalse(text(stripped).contains(CameraPhoto.PLACE));
    assertFalse(text(stripped).contains(type));
    assertSamePicture(plain, stripped);
  }

  private static byte[] chunk(String type, byte[] content) {
    byte[] named = (type + text(content)).getBytes(StandardCharsets.ISO_8859_1);
    CRC32 check = new CRC32();
    check.update(named);
    return ByteBuffer.allocate(named.length + 8)
        .putInt(content.length)
        .put(named)
        .putInt((int) check.getValue())
        .array();
  }

  @Test
  void whatBreaksOffIsRefusedWhereverItDoes() {
    byte[] camera = CameraPhoto.jpeg();
    int end = CameraPhoto.PLACE.length();
    for (int length = 0; length < camera.length - end; length++) {
      byte[] part = Arrays.copyOf(camera, length);
      assertThrows(RecordException.class, () -> PhotoMetadata.stripped(part));
    }
    byte[] png = CameraPhoto.plain("png");
    for (int length = 0; length < png.length; length++) {
      byte[] part = Arrays.copyOf(png, length);
      assertThrows(RecordException.class, () -> PhotoMetadata.stripped(part));
    }
  }
}
