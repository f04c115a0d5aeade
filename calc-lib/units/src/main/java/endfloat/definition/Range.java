package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Where a parameter is valid, both ends included: {@code "14.5 deg .. 30 deg"}, {@code "> 0 mm"},
 * {@code ">= 0"}, {@code "<= 1"}, {@code "< 90 deg"}. {@code ">"} and {@code "<"} leave the end
 * out, also of an interval: {@code "> 0 deg .. < 90 deg"}. A value outside is refused before the
 * method runs.
 */
@Target({ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.CLASS)
public @interface Range {
  String value();
}
