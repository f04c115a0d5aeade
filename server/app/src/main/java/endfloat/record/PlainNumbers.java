package endfloat.record;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ValueNode;
import java.math.BigDecimal;

/**
 * A number of the file is a double where the shortest decimal of that double is the number written;
 * else its digits are kept. So our own figures are rewritten byte for byte, and a foreign field
 * loses no digit.
 */
final class PlainNumbers extends JsonNodeFactory {
  static final String TOO_GREAT = "the number is too great";

  private static final long serialVersionUID = 1L;

  @Override
  public ValueNode numberNode(BigDecimal written) {
    double value = written.doubleValue();
    if (Double.isInfinite(value)) {
      throw new IllegalArgumentException(TOO_GREAT);
    }
    boolean shortest = new BigDecimal(NumberOutput.toString(value, true)).compareTo(written) == 0;
    return shortest ? DoubleNode.valueOf(value) : DecimalNode.valueOf(written);
  }
}
