package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The relation as an expression of the working language over the snake_case parameters, such as
 * {@code "2 * shift * tan(pressure_angle) * sin(pitch_angle)"}. It is what the page typesets; a
 * test compares it with the method at random points.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.CLASS)
public @interface TypesetAs {
  String value();
}
