package endfloat.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** A drawing that the user's own Java made is drawn whole or not at all. */
class PictureDrawerTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<line x1='0' y1='0' x2='9' y2='9' stroke='#123456'/>; true",
        "<polyline points='0,0 5,5 9,0' stroke='currentColor' fill='none'/>; true",
        "<polygon points='0 0 5 5 9 0'/><ellipse cx='1' cy='2' rx='3' ry='4'/>; true",
        "<path d='M0 0 C 1 1 2 2 3 3'/>; false",
        "<rect width='9' height='9' fill='teal'/>; false",
        "<g transform='rotate(90)'><line x2='9'/></g>; false",
        "<line x2='far'/>; false"
      })
  void isDrawnWholeOrNotAtAll(String inside, boolean whole) throws Exception {
    assertEquals(whole, new PictureDrawer(new PictureLooks("")).canDraw(svg(inside), null));
  }

  private static Element svg(String inside) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    String text = "<svg xmlns='http://www.w3.org/2000/svg'>" + inside + "</svg>";
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
        .getDocumentElement();
  }
}
