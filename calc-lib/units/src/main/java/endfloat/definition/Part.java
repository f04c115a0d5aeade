package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record of quantities of which a calculation takes a list. Its snake_case name is its
 * constructor in the working language: {@code segment(length: 40 mm, outer: 30 mm)}. Components
 * carry {@link In}, {@link Range} and {@link Default}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.CLASS)
public @interface Part {
  /** Name in the working language, where it is not the record's name in snake_case. */
  String name() default "";
}
